package org.marshlight.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.evidence.Catalogues;

/** Random legal plans, as the requests that a client would send. The same seed gives the same. */
public final class RandomPlans {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final Random random;

  public RandomPlans(long seed) {
    this.random = new Random(seed);
  }

  /** The next plan; it always has a tank, and any of the other sections. */
  public ObjectNode next() {
    ObjectNode plan = JSON.objectNode();
    plan.put("name", "Invented at random");
    site(plan.putObject("site"));
    sometimes(0.9, plan, "people", this::people);
    if (random.nextDouble() < 0.7) {
      ArrayNode feeds = plan.putArray("feeds");
      for (int i = random.nextInt(4); i > 0; i--) {
        feed(feeds.addObject());
      }
    }
    tank(plan.putObject("tank"));
    sometimes(0.7, plan, "cover", this::cover);
    sometimes(0.8, plan, "gas", this::gas);
    boolean beds = random.nextDouble() < 0.75;
    if (beds) {
      ArrayNode list = plan.putArray("beds");
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        bed(list.addObject());
      }
      put(plan, "waterUse", pick("irrigation", "soil-absorption", "surface-discharge"));
      sometimes(0.3, plan, "diversion", this::diversion);
      sometimes(0.6, plan, "fuel", this::fuel);
    }
    sometimes(0.6, plan, "compost", this::compost);
    sometimes(0.5, plan, "routes", this::routes);
    return plan;
  }

  private void site(ObjectNode site) {
    put(site.putObject("climate"), "id", pick(BuiltInClimates.standard().ids()));
    maybe(site, "soil", pick(Catalogues.standard().ids("soils")));
  }

  private void people(ObjectNode people) {
    people.put("count", random.nextInt(9));
    maybe(people, "wastewater", pick("all", "toilet-only"));
    if (random.nextBoolean()) {
      ArrayNode present = people.putArray("presentFraction");
      for (int month = 0; month < 12; month++) {
        present.add(random.nextInt(5) / 4.0);
      }
    }
  }

  private void feed(ObjectNode feed) {
    put(feed, "feed", pick(Catalogues.standard().ids("feeds")));
    feed.put("freshKgPerDay", number(0, 12));
    months(0.4, feed, "months");
  }

  private void tank(ObjectNode tank) {
    maybe(tank, "shape", pick("rectangular", "cylindrical"));
    tank.put("liquidVolumeM3", number(3, 20));
    maybe(tank, "liquidDepthM", number(0.8, 2));
    maybe(tank, "burialDepthM", number(0, 1.5));
    maybe(tank, "wallResistanceM2KW", number(0.02, 4));
    maybe(tank, "lidResistanceM2KW", number(0.02, 4));
    maybe(tank, "compartments", 1 + random.nextInt(3));
    maybe(tank, "desludgingIntervalYears", number(0.5, 12));
    maybe(tank, "desludgingMonth", 1 + random.nextInt(12));
  }

  private void cover(ObjectNode cover) {
    maybe(cover, "kind", pick("none", "earth", "glazed"));
    maybe(cover, "apertureM2", number(0.5, 12));
    maybe(cover, "tiltDeg", number(0, 90));
    maybe(cover, "azimuthDeg", number(0, 360));
    maybe(cover, "layers", 1 + random.nextInt(2));
    maybe(cover, "nightResistanceM2KW", number(0, 3));
  }

  private void gas(ObjectNode gas) {
    maybe(gas, "storeM3", number(0, 5));
    maybe(gas, "surplus", pick("flare", "vent"));
    months(0.2, gas, "monthsOff");
    ArrayNode uses = gas.putArray("uses");
    if (random.nextBoolean()) {
      uses.addObject().put("use", "cooking").put("mealsPerDay", number(0, 3));
    }
    if (random.nextBoolean()) {
      ObjectNode use = uses.addObject();
      put(use, "use", pick("cooking", "hot-water", "lamp", "engine"));
      use.put("hoursPerDay", number(0, 8));
    }
  }

  private void bed(ObjectNode bed) {
    maybe(bed, "kind", pick("free-water-surface", "horizontal-subsurface"));
    bed.put("areaM2", number(2, 120));
    maybe(bed, "depthM", number(0.2, 0.45));
    maybe(bed, "medium", pick("fine-gravel", "medium-gravel"));
    maybe(bed, "plant", pick(Catalogues.standard().ids("plants")));
    maybe(bed, "harvestedFraction", number(0, 1));
    months(0.2, bed, "monthsOff");
  }

  private void diversion(ObjectNode diversion) {
    months(0.5, diversion, "months");
    maybe(diversion, "inFrost", random.nextBoolean());
    maybe(diversion, "whenClogged", random.nextBoolean());
    maybe(diversion, "whenOverLimit", random.nextBoolean());
  }

  private void fuel(ObjectNode fuel) {
    maybe(fuel, "mashedFraction", number(0, 1));
    maybe(fuel, "route", pick("enzyme", "malt"));
    maybe(fuel, "heat", pick(Catalogues.standard().ids("fuels")));
    if (random.nextBoolean()) {
      ObjectNode still = fuel.putObject("still");
      maybe(still, "kind", pick("pot", "column"));
      maybe(still, "theoreticalPlates", number(1, 25));
      maybe(still, "refluxRatio", number(0.3, 12));
      maybe(still, "runs", 1 + random.nextInt(2));
    }
  }

  private void compost(ObjectNode compost) {
    maybe(compost, "method", pick("turned-heap", "static-heap", "bin"));
    if (random.nextBoolean()) {
      ArrayNode ingredients = compost.putArray("ingredients");
      for (int i = random.nextInt(4); i > 0; i--) {
        ObjectNode ingredient = ingredients.addObject();
        put(ingredient, "ingredient", pick(Catalogues.standard().ids("ingredients")));
        ingredient.put("freshKgPerYear", number(0, 800));
      }
    }
  }

  private void routes(ObjectNode routes) {
    maybe(routes, "greywater", pick("first-bed", "soil-absorption"));
    maybe(routes, "sludge", pick("hauled-away", "compost"));
    maybe(routes, "stillage", pick("compost", "tank", "land"));
    maybe(routes, "tops", pick("compost", "tank", "land"));
  }

  private void sometimes(
      double chance, ObjectNode plan, String section, Consumer<ObjectNode> content) {
    if (random.nextDouble() < chance) {
      content.accept(plan.putObject(section));
    }
  }

  private void months(double chance, ObjectNode owner, String name) {
    if (random.nextDouble() < chance) {
      ArrayNode months = owner.putArray(name);
      for (int month = 1; month <= 12; month++) {
        if (random.nextDouble() < 0.4) {
          months.add(month);
        }
      }
    }
  }

  private void maybe(ObjectNode owner, String name, Object value) {
    if (random.nextDouble() < 0.7) {
      put(owner, name, value);
    }
  }

  private static void put(ObjectNode owner, String name, Object value) {
    owner.putPOJO(name, value);
  }

  private double number(double low, double high) {
    return Math.rint((low + random.nextDouble() * (high - low)) * 1000) / 1000;
  }

  private String pick(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private String pick(Iterable<String> choices) {
    List<String> list = new java.util.ArrayList<>();
    choices.forEach(list::add);
    return list.get(random.nextInt(list.size()));
  }
}
