package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/** Holds an outflow to the limits of its use. No use here is food that is eaten raw. */
final class UseFitness {

  private static final ToDoubleBiFunction<Outflow, Integer> BOD5 =
      (outflow, month) -> Strength.mgL(outflow.stream().bod5Kg()[month], outflow.stream(), month);
  private static final ToDoubleBiFunction<Outflow, Integer> SOLIDS =
      (outflow, month) ->
          Strength.mgL(outflow.stream().suspendedSolidsKg()[month], outflow.stream(), month);
  private static final ToDoubleBiFunction<Outflow, Integer> NITROGEN =
      (outflow, month) ->
          Strength.mgL(outflow.stream().monthly().get(month).nitrogenKg(), outflow.stream(), month);
  private static final ToDoubleBiFunction<Outflow, Integer> COLIFORMS =
      (outflow, month) -> outflow.stream().faecalColiformsPer100ML()[month];
  private static final ToDoubleBiFunction<Outflow, Integer> DISSOLVED =
      (outflow, month) -> Strength.mgL(outflow.dissolvedSolidsKg()[month], outflow.stream(), month);

  private final WaterUse use;
  private final List<Limit> limits;

  UseFitness(WaterUse use, CoefficientSet set) {
    this.use = use;
    this.limits = limits(use, set.bind(UseLimits.class), set);
  }

  /** The worst of all parameters in a month. */
  UseAnswer worst(Outflow outflow, int month) {
    UseAnswer worst = UseAnswer.NO_OUTFLOW;
    for (Limit limit : limits) {
      worst = worse(worst, limit.answer(outflow, month));
    }
    return worst;
  }

  WetlandEstimate.Fitness fitness(Outflow outflow) {
    List<WetlandEstimate.UseVerdict> verdicts = new ArrayList<>();
    for (Limit limit : limits) {
      List<UseAnswer> answers = new ArrayList<>();
      for (int month = 0; month < Months.COUNT; month++) {
        answers.add(limit.answer(outflow, month));
      }
      verdicts.add(
          new WetlandEstimate.UseVerdict(
              limit.parameter(),
              limit.unit(),
              limit.strict(),
              limit.lenient(),
              limit.values(outflow),
              List.copyOf(answers),
              limit.source()));
    }
    List<UseAnswer> monthly = new ArrayList<>();
    UseAnswer year = UseAnswer.NO_OUTFLOW;
    for (int month = 0; month < Months.COUNT; month++) {
      monthly.add(worst(outflow, month));
      year = worse(year, monthly.get(month));
    }
    return new WetlandEstimate.Fitness(use, List.copyOf(verdicts), List.copyOf(monthly), year);
  }

  private static UseAnswer worse(UseAnswer one, UseAnswer other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static List<Limit> limits(WaterUse use, UseLimits l, CoefficientSet set) {
    return switch (use) {
      case IRRIGATION -> irrigation(l, set);
      case SURFACE_DISCHARGE -> discharge(l, set);
      case SOIL_ABSORPTION -> soil(l, set);
    };
  }

  private static List<Limit> irrigation(UseLimits l, CoefficientSet set) {
    List<Limit> limits = new ArrayList<>();
    limits.add(
        limit("irrigation-bod5", l.irrigationBod5Strict(), l.irrigationBod5Lenient(), BOD5, set));
    limits.add(
        limit(
            "irrigation-solids",
            l.irrigationSolidsStrict(),
            l.irrigationSolidsLenient(),
            SOLIDS,
            set));
    limits.add(
        limit(
            "irrigation-nitrogen",
            l.irrigationNitrogenStrict(),
            l.irrigationNitrogenLenient(),
            NITROGEN,
            set));
    limits.add(
        limit(
            "irrigation-coliforms",
            l.irrigationColiformsStrict(),
            l.irrigationColiformsLenient(),
            COLIFORMS,
            set));
    limits.add(
        limit(
            "irrigation-dissolved-solids",
            l.irrigationDissolvedSolidsStrict(),
            l.irrigationDissolvedSolidsLenient(),
            DISSOLVED,
            set));
    limits.addAll(salts(l, set.bind(SaltCoefficients.class), set));
    return List.copyOf(limits);
  }

  private static List<Limit> salts(UseLimits l, SaltCoefficients inflow, CoefficientSet set) {
    return List.of(
        limit(
            "irrigation-sodium",
            l.irrigationSodiumStrict(),
            l.irrigationSodiumLenient(),
            (water, month) ->
                Salinity.sodiumAdsorptionRatio(inflow.sodiumRatio(), water.saltFactor()[month]),
            set),
        limit(
            "irrigation-chloride",
            l.irrigationChlorideStrict(),
            l.irrigationChlorideLenient(),
            (water, month) -> inflow.chlorideMgL() * water.saltFactor()[month],
            set),
        limit(
            "irrigation-boron",
            l.irrigationBoronStrict(),
            l.irrigationBoronLenient(),
            (water, month) -> inflow.boronMgL() * water.saltFactor()[month],
            set));
  }

  private static List<Limit> discharge(UseLimits l, CoefficientSet set) {
    return List.of(
        limit("discharge-bod5", l.dischargeBod5Strict(), l.dischargeBod5Lenient(), BOD5, set),
        limit(
            "discharge-solids", l.dischargeSolidsStrict(), l.dischargeSolidsLenient(), SOLIDS, set),
        limit(
            "discharge-coliforms",
            l.dischargeColiformsStrict(),
            l.dischargeColiformsLenient(),
            COLIFORMS,
            set));
  }

  private static List<Limit> soil(UseLimits l, CoefficientSet set) {
    return List.of(
        limit("soil-bod5", l.soilBod5Strict(), l.soilBod5Lenient(), BOD5, set),
        limit("soil-solids", l.soilSolidsStrict(), l.soilSolidsLenient(), SOLIDS, set));
  }

  private static Limit limit(
      String name,
      double strict,
      double lenient,
      ToDoubleBiFunction<Outflow, Integer> strength,
      CoefficientSet set) {
    String id = "wetland.limit." + name + "-lenient";
    CoefficientRow row = set.book().rows().get(set.book().ordinal(id));
    String parameter = name.substring(name.indexOf('-') + 1);
    return new Limit(parameter, row.unit(), strict, lenient, strength, row.source());
  }

  /** One parameter and its two limits. */
  private record Limit(
      String parameter,
      String unit,
      double strict,
      double lenient,
      ToDoubleBiFunction<Outflow, Integer> strength,
      String source) {

    /** The parameter in each month; null in one without outflow. */
    List<Double> values(Outflow outflow) {
      double[] values = new double[Months.COUNT];
      for (int month = 0; month < Months.COUNT; month++) {
        boolean flows = outflow.stream().volumeM3(month) > 0;
        values[month] = flows ? strength.applyAsDouble(outflow, month) : Double.NaN;
      }
      return Months.list(values);
    }

    UseAnswer answer(Outflow outflow, int month) {
      if (outflow.stream().volumeM3(month) <= 0) {
        return UseAnswer.NO_OUTFLOW;
      }
      double value = strength.applyAsDouble(outflow, month);
      if (value <= strict) {
        return UseAnswer.FIT;
      }
      return value <= lenient ? UseAnswer.WITH_CARE : UseAnswer.UNFIT;
    }
  }
}
