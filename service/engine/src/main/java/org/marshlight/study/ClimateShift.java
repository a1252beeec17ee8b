package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.marshlight.climate.BuiltInClimate;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.MonthlyNormals;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;

/** One way in which the climate of a plan may be off, the same in every month. */
enum ClimateShift {
  AIR_TEMPERATURE("K", 0, "Departure of the air's mean temperature.") {
    @Override
    List<String> fields() {
      return List.of(
          "meanAirTemperatureC", "meanMaxAirTemperatureC", "meanMinAirTemperatureC", "dewPointC");
    }

    @Override
    double shifted(double normal, double shift) {
      return normal + shift;
    }
  },
  SOLAR("1", 1, "Factor on the sun's radiation.") {
    @Override
    List<String> fields() {
      return List.of("horizontalSolarKWhM2Day");
    }
  },
  RAIN("1", 1, "Factor on the rain.") {
    @Override
    List<String> fields() {
      return List.of("rainMm");
    }
  },
  WIND("1", 1, "Factor on the wind.") {
    @Override
    List<String> fields() {
      return List.of("windMS");
    }
  };

  private static final int HALVINGS = 30;

  private final String unit;
  private final double none;
  private final String meaning;

  ClimateShift(String unit, double none, String meaning) {
    this.unit = unit;
    this.none = none;
    this.meaning = meaning;
  }

  /** Normals that the shift moves. */
  abstract List<String> fields();

  double shifted(double normal, double shift) {
    return normal * shift;
  }

  String unit() {
    return unit;
  }

  /** The shift that changes nothing. */
  double none() {
    return none;
  }

  String meaning() {
    return meaning;
  }

  /** Name under which the shift is listed. */
  String id() {
    return "climate." + WireName.of(this);
  }

  /** Whether the plan has any of the normals that the shift moves. */
  boolean moves(Plan plan) {
    MonthlyNormals normals = normals(plan);
    RecordShape shape = RecordShape.of(MonthlyNormals.class);
    return fields().stream().anyMatch(name -> shape.field(name).orElseThrow().of(normals) != null);
  }

  /**
   * The same plan with its climate shifted; one that names a station gets the station's normals.
   */
  Plan apply(Plan plan, double shift) {
    return shift == none ? plan : with(plan, value -> shifted(value, shift));
  }

  /**
   * The shift nearest to one wanted that leaves the plan legal.
   *
   * @param plan a legal plan
   * @param wanted the shift wanted
   */
  double legal(Plan plan, double wanted) {
    if (isLegal(plan, wanted)) {
      return wanted;
    }
    double good = none;
    double bad = wanted;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (good + bad) / 2;
      if (isLegal(plan, middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private boolean isLegal(Plan plan, double shift) {
    return PlanCheck.faults(apply(plan, shift)).isEmpty();
  }

  private Plan with(Plan plan, DoubleUnaryOperator change) {
    MonthlyNormals normals = normals(plan);
    RecordShape shape = RecordShape.of(MonthlyNormals.class);
    Object[] values = new Object[shape.fields().size()];
    for (int i = 0; i < values.length; i++) {
      RecordShape.Field field = shape.fields().get(i);
      values[i] = field.of(normals);
      if (values[i] != null && fields().contains(field.name())) {
        List<Double> months = new ArrayList<>();
        for (Object month : (List<?>) values[i]) {
          months.add(change.applyAsDouble((Double) month));
        }
        values[i] = List.copyOf(months);
      }
    }
    return withNormals(plan, (MonthlyNormals) shape.create(values));
  }

  private static MonthlyNormals normals(Plan plan) {
    return plan.site().climate().normals();
  }

  private static Plan withNormals(Plan plan, MonthlyNormals normals) {
    SiteDesign site = plan.site();
    SiteDesign changed = RecordShape.changed(site, "climate", new ClimateChoice(null, normals));
    BuiltInClimate station = site.climate().station();
    if (station != null) {
      changed = filled(changed, "latitudeDeg", station.latitudeDeg());
      changed = filled(changed, "longitudeDeg", station.longitudeDeg());
      changed = filled(changed, "elevationM", station.elevationM());
    }
    return RecordShape.changed(plan, "site", changed);
  }

  private static SiteDesign filled(SiteDesign site, String field, double value) {
    return RecordShape.of(SiteDesign.class).field(field).orElseThrow().of(site) == null
        ? RecordShape.changed(site, field, value)
        : site;
  }
}
