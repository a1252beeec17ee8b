package org.marshlight.digester;

import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Waste;

/** Checks a tank's year against the limits beyond which tanks fail. */
final class Stability {

  /** Acetic acid for each kg of its COD. */
  private static final double ACETIC_PER_COD = 60.052 / 63.996;

  /** Calcium carbonate alkalinity for each kg of ammonium nitrogen: 50.04 / 14.007. */
  private static final double ALKALINITY_PER_AMMONIUM = 50.04 / 14.007;

  private Stability() {}

  static List<DigesterEstimate.Check> checks(
      List<Waste> wastes,
      double liquidM3,
      HeatYear warmth,
      DigestionYear matter,
      CoefficientSet set) {
    StabilityCoefficients limits = set.bind(StabilityCoefficients.class);
    return List.of(
        loading(wastes, liquidM3, warmth, limits),
        sludgeAge(matter, warmth, limits),
        capacity(matter),
        carbonToNitrogen(wastes, limits),
        freeAmmonia(warmth, matter, limits),
        acidToAlkalinity(matter, limits),
        sulphate(wastes, set, limits));
  }

  private static DigesterEstimate.Check loading(
      List<Waste> wastes, double liquidM3, HeatYear warmth, StabilityCoefficients limits) {
    double[] loading = new double[Months.COUNT];
    double[] limit = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      for (Waste waste : wastes) {
        loading[month] += waste.perDay().get(month).volatileSolidsKg() / liquidM3;
      }
      limit[month] =
          between(limits.loadingLimit10(), limits.loadingLimit35(), warmth.monthlyLiquorC[month]);
    }
    int worst = greatest(month -> loading[month] / limit[month]);
    return check("digester.loading", loading[worst], limit[worst], "kg/(m3.d)", worst, false);
  }

  private static DigesterEstimate.Check sludgeAge(
      DigestionYear matter, HeatYear warmth, StabilityCoefficients limits) {
    int coldest = greatest(month -> -warmth.monthlyLiquorC[month]);
    double age = matter.years * Months.DAYS_PER_YEAR / 2.0;
    double least =
        between(
            limits.sludgeAgeLimit10(), limits.sludgeAgeLimit35(), warmth.monthlyLiquorC[coldest]);
    return check("digester.sludge-age", age, least, "d", coldest, true);
  }

  private static DigesterEstimate.Check capacity(DigestionYear matter) {
    int worst = greatest(month -> matter.acidOverCapacity[month]);
    return check(
        "digester.acid-over-capacity", matter.acidOverCapacity[worst], 1, "1", worst, false);
  }

  private static DigesterEstimate.Check carbonToNitrogen(
      List<Waste> wastes, StabilityCoefficients limits) {
    double[] ratio = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      Matter day = Matter.NONE;
      for (Waste waste : wastes) {
        day = day.plus(waste.perDay().get(month));
      }
      ratio[month] = day.nitrogenKg() > 0 ? day.organicCarbonKg() / day.nitrogenKg() : 0;
    }
    int worst = greatest(month -> ratio[month]);
    return check(
        "digester.carbon-to-nitrogen",
        ratio[worst],
        limits.carbonNitrogenMost(),
        "1",
        worst,
        false);
  }

  private static DigesterEstimate.Check freeAmmonia(
      HeatYear warmth, DigestionYear matter, StabilityCoefficients limits) {
    double[] free = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      free[month] =
          1000
              * matter.ammoniumKgM3[month]
              * MethaneKinetics.freeAmmoniaFraction(
                  Math.max(-5, Math.min(80, warmth.monthlyLiquorC[month])), limits.liquorPh());
    }
    int worst = greatest(month -> free[month]);
    return check(
        "digester.free-ammonia", free[worst], limits.freeAmmoniaLimit(), "mg/L", worst, false);
  }

  private static DigesterEstimate.Check acidToAlkalinity(
      DigestionYear matter, StabilityCoefficients limits) {
    double[] ratio = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double alkalinity =
          matter.ammoniumKgM3[month] * ALKALINITY_PER_AMMONIUM + limits.waterAlkalinity();
      ratio[month] = alkalinity > 0 ? matter.acidCodKgM3[month] * ACETIC_PER_COD / alkalinity : 0;
    }
    int worst = greatest(month -> ratio[month]);
    return check(
        "digester.acid-to-alkalinity",
        ratio[worst],
        limits.acidAlkalinityLimit(),
        "1",
        worst,
        false);
  }

  private static DigesterEstimate.Check sulphate(
      List<Waste> wastes, CoefficientSet set, StabilityCoefficients limits) {
    double[] inverse = new double[Months.COUNT];
    double sulphur = set.bind(DigestionCoefficients.class).sulphateSulphur();
    for (int month = 0; month < Months.COUNT; month++) {
      double cod = 0;
      double water = 0;
      for (Waste waste : wastes) {
        cod += waste.perDay().get(month).codKg();
        water += waste.perDay().get(month).waterKg();
      }
      inverse[month] = cod > 0 ? water * sulphur / cod : 0;
    }
    int worst = greatest(month -> inverse[month]);
    Double ratio = inverse[worst] > 0 ? Double.valueOf(1 / inverse[worst]) : null;
    return check("digester.cod-to-sulphur", ratio, limits.codSulphurLimit(), "1", worst, true);
  }

  /** A limit that runs evenly in proportion between its values at 10 and 35 Cel. */
  private static double between(double atTen, double atThirtyFive, double temperatureC) {
    double place = (Math.max(0, Math.min(40, temperatureC)) - 10) / 25;
    return atTen * FastMath.pow(atThirtyFive / atTen, place);
  }

  private static int greatest(java.util.function.IntToDoubleFunction value) {
    int worst = 0;
    for (int month = 1; month < Months.COUNT; month++) {
      if (value.applyAsDouble(month) > value.applyAsDouble(worst)) {
        worst = month;
      }
    }
    return worst;
  }

  private static DigesterEstimate.Check check(
      String code, Double value, double limit, String unit, int month, boolean atLeast) {
    boolean kept = value == null || (atLeast ? value >= limit : value <= limit);
    return new DigesterEstimate.Check(
        code,
        value,
        limit,
        unit,
        month + 1,
        kept,
        Sentences.text(
            code + (kept ? "-kept" : "-broken"),
            Params.of("value", value == null ? "no" : value, "limit", limit, "month", month + 1)));
  }
}
