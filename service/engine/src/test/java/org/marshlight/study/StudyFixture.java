package org.marshlight.study;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.SiteDesign;
import org.marshlight.compost.CompostDesign;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.contract.RecordOf;
import org.marshlight.contract.RecordShape;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.GasDesign;
import org.marshlight.digester.GasPurpose;
import org.marshlight.digester.GasUse;
import org.marshlight.digester.TankDesign;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.BedDesign;

/**
 * An invented homestead of four with a glazed tank and one bed, an invented heap, whose runs are
 * many times quicker, and a bench to study them on.
 */
final class StudyFixture {

  static final Plan PLAN = plan(Map.of());

  /** The tank without its bed, in weather that is certain. */
  static final Plan TANK = RecordShape.changed(plan(weather()), "beds", null);

  /** A heap of straw and manure in weather that is certain. */
  static final Plan HEAP =
      record(
          Plan.class,
          "site",
          site(),
          "compost",
          record(
              CompostDesign.class,
              "ingredients",
              List.of(
                  record(IngredientDesign.class, "ingredient", "straw", "freshKgPerYear", 150.0),
                  record(
                      IngredientDesign.class,
                      "ingredient",
                      "horse-manure",
                      "freshKgPerYear",
                      600.0))),
          "coefficients",
          weather());

  private StudyFixture() {}

  static Plan plan(Map<String, Double> coefficients) {
    return record(
        Plan.class,
        "site",
        site(),
        "people",
        record(PeopleDesign.class, "count", 4),
        "feeds",
        List.of(record(FeedDesign.class, "feed", "kitchen-scraps", "freshKgPerDay", 3.0)),
        "tank",
        record(TankDesign.class, "liquidVolumeM3", 5.0),
        "cover",
        record(CoverDesign.class, "kind", CoverKind.GLAZED, "apertureM2", 4.0),
        "gas",
        record(
            GasDesign.class,
            "uses",
            List.of(record(GasUse.class, "use", GasPurpose.COOKING, "hoursPerDay", 1.5))),
        "beds",
        List.of(record(BedDesign.class, "areaM2", 20.0)),
        "coefficients",
        coefficients);
  }

  private static SiteDesign site() {
    String climate = BuiltInClimates.standard().ids().iterator().next();
    return record(SiteDesign.class, "climate", new ClimateChoice(climate, null));
  }

  /** Every coefficient on which weather and ground rest, set to what it is anyway. */
  private static Map<String, Double> weather() {
    Map<String, Double> set = new TreeMap<>();
    CoefficientBook.standard().rows().stream()
        .filter(row -> row.id().startsWith("climate.") || row.id().startsWith("soils."))
        .forEach(row -> set.put(row.id(), row.value()));
    return set;
  }

  /** A plan with other coefficients set beside its own. */
  static Plan with(Plan plan, Map<String, Double> coefficients) {
    Map<String, Double> all = new TreeMap<>(plan.coefficients());
    all.putAll(coefficients);
    return RecordShape.changed(plan, "coefficients", all);
  }

  /** A record with some of its fields given, and the others not. */
  static <R extends Record> R record(Class<R> type, Object... pairs) {
    return RecordOf.record(type, pairs);
  }

  /** Studies on a bench with some threads. */
  static <T extends Record> Studied<T> run(StudyRequest<T> request, int threads) {
    return on(threads, bench -> request.prepare().run(bench));
  }

  static <T> T on(int threads, Function<Workbench, T> work) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      return work.apply(new Workbench(pool, threads, Workbench.Watcher.NONE));
    } finally {
      pool.shutdownNow();
    }
  }
}
