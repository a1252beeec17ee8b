package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.marshlight.climate.MonthlyNormals;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Months;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.digester.GasUse;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.loop.Plan;

/**
 * Random plans in which some numbers are at the ends of what a plan may hold, and some coefficients
 * too. Each field alone is legal; the whole plan may be refused. The same seed gives the same.
 */
public final class ExtremePlans {

  private static final double AT_AN_END = 0.25;
  private static final double OWN_WEATHER = 0.5;
  private static final int MOST_OVERRIDES = 4;

  private final RandomPlans plans;
  private final Random random;

  public ExtremePlans(long seed) {
    plans = new RandomPlans(seed);
    random = new Random(seed);
  }

  /** The next plan. */
  public ObjectNode next() {
    ObjectNode plan = plans.next();
    if (random.nextDouble() < OWN_WEATHER) {
      weather((ObjectNode) plan.get("site"));
    }
    for (String section : new String[] {"money", "baseline", "cover", "gas", "compost"}) {
      if (!plan.has(section) && random.nextBoolean()) {
        plan.putObject(section);
      }
    }
    stretch(plan, Plan.class);
    overrides(plan.putObject("coefficients"));
    return plan;
  }

  /** Monthly normals of a place that is hot, cold or both, with or without sun and wind. */
  private void weather(ObjectNode site) {
    boolean sunny = random.nextBoolean();
    site.put("latitudeDeg", sunny ? -30 + random.nextInt(61) : -90 + random.nextInt(181));
    ObjectNode monthly = site.putObject("climate").putObject("monthly");
    RecordShape shape = RecordShape.of(MonthlyNormals.class);
    Quantity air = shape.field("meanAirTemperatureC").orElseThrow().quantity().orElseThrow();
    double swing = random.nextInt(3) * (air.max() - air.min()) / 4;
    double mean = air.min() + swing + random.nextDouble() * (air.max() - air.min() - 2 * swing);
    ArrayNode temperatures = monthly.putArray("meanAirTemperatureC");
    ArrayNode sun = monthly.putArray("horizontalSolarKWhM2Day");
    ArrayNode wind = monthly.putArray("windMS");
    ArrayNode rain = monthly.putArray("rainMm");
    Quantity speed = shape.field("windMS").orElseThrow().quantity().orElseThrow();
    Quantity depth = shape.field("rainMm").orElseThrow().quantity().orElseThrow();
    double windMS = end(speed);
    double rainMm = end(depth);
    for (int month = 0; month < Months.COUNT; month++) {
      temperatures.add(mean + swing * Math.cos(2 * Math.PI * month / Months.COUNT));
      sun.add(sunny ? random.nextInt(6) : 0);
      wind.add(windMS);
      rain.add(rainMm);
    }
  }

  private void stretch(ObjectNode node, Class<? extends Record> type) {
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      JsonNode value = node.get(field.name());
      Class<?> element = field.elementType();
      boolean list = field.type() == List.class;
      if (element.isRecord()) {
        Class<? extends Record> record = element.asSubclass(Record.class);
        if (value instanceof ObjectNode object && record != MonthlyNormals.class) {
          stretch(object, record);
        } else if (value instanceof ArrayNode array) {
          array.forEach(entry -> stretch((ObjectNode) entry, record));
        }
      } else if (!list
          && field.type() != Map.class
          && field.quantity().isPresent()
          && (value != null || type != GasUse.class)
          && type != SiteDesign.class
          && random.nextDouble() < AT_AN_END) {
        put(node, field, end(field.quantity().get()));
      }
    }
  }

  private static void put(ObjectNode node, RecordShape.Field field, double value) {
    if (field.type() == Integer.class) {
      node.put(field.name(), (int) value);
    } else {
      node.put(field.name(), value);
    }
  }

  private double end(Quantity quantity) {
    return random.nextBoolean() ? quantity.min() : quantity.max();
  }

  private void overrides(ObjectNode coefficients) {
    List<CoefficientRow> rows = CoefficientBook.standard().rows();
    for (int i = random.nextInt(MOST_OVERRIDES + 1); i > 0; i--) {
      CoefficientRow row = rows.get(random.nextInt(rows.size()));
      coefficients.put(row.id(), random.nextBoolean() ? row.least() : row.most());
    }
  }
}
