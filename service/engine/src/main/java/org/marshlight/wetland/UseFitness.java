package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/** Holds an outflow to the limits of its use. No use here is food that is eaten raw. */
final class UseFitness {

  private static final String MG_L = "mg/L";
  private static final ToDoubleBiFunction<WaterStream, Integer> BOD5 =
      (stream, month) -> Strength.mgL(stream.bod5Kg()[month], stream, month);
  private static final ToDoubleBiFunction<WaterStream, Integer> SOLIDS =
      (stream, month) -> Strength.mgL(stream.suspendedSolidsKg()[month], stream, month);
  private static final ToDoubleBiFunction<WaterStream, Integer> NITROGEN =
      (stream, month) -> Strength.mgL(stream.monthly().get(month).nitrogenKg(), stream, month);
  private static final ToDoubleBiFunction<WaterStream, Integer> COLIFORMS =
      (stream, month) -> stream.faecalColiformsPer100ML()[month];

  private final WaterUse use;
  private final List<Limit> limits;

  UseFitness(WaterUse use, CoefficientSet set) {
    this.use = use;
    this.limits = limits(use, set.bind(UseLimits.class), set);
  }

  /** The worst of all parameters in a month. */
  UseAnswer worst(WaterStream outflow, int month) {
    UseAnswer worst = UseAnswer.NO_OUTFLOW;
    for (Limit limit : limits) {
      worst = worse(worst, limit.answer(outflow, month));
    }
    return worst;
  }

  WetlandEstimate.Fitness fitness(WaterStream outflow) {
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
      case IRRIGATION ->
          List.of(
              limit(
                  "irrigation-bod5",
                  MG_L,
                  l.irrigationBod5Strict(),
                  l.irrigationBod5Lenient(),
                  BOD5,
                  set),
              limit(
                  "irrigation-solids",
                  MG_L,
                  l.irrigationSolidsStrict(),
                  l.irrigationSolidsLenient(),
                  SOLIDS,
                  set),
              limit(
                  "irrigation-nitrogen",
                  MG_L,
                  l.irrigationNitrogenStrict(),
                  l.irrigationNitrogenLenient(),
                  NITROGEN,
                  set),
              limit(
                  "irrigation-coliforms",
                  "{CFU}/dL",
                  l.irrigationColiformsStrict(),
                  l.irrigationColiformsLenient(),
                  COLIFORMS,
                  set));
      case SURFACE_DISCHARGE ->
          List.of(
              limit(
                  "discharge-bod5",
                  MG_L,
                  l.dischargeBod5Strict(),
                  l.dischargeBod5Lenient(),
                  BOD5,
                  set),
              limit(
                  "discharge-solids",
                  MG_L,
                  l.dischargeSolidsStrict(),
                  l.dischargeSolidsLenient(),
                  SOLIDS,
                  set),
              limit(
                  "discharge-coliforms",
                  "{CFU}/dL",
                  l.dischargeColiformsStrict(),
                  l.dischargeColiformsLenient(),
                  COLIFORMS,
                  set));
      case SOIL_ABSORPTION ->
          List.of(
              limit("soil-bod5", MG_L, l.soilBod5Strict(), l.soilBod5Lenient(), BOD5, set),
              limit("soil-solids", MG_L, l.soilSolidsStrict(), l.soilSolidsLenient(), SOLIDS, set));
    };
  }

  private static Limit limit(
      String name,
      String unit,
      double strict,
      double lenient,
      ToDoubleBiFunction<WaterStream, Integer> strength,
      CoefficientSet set) {
    String id = "wetland.limit." + name + "-lenient";
    String source = set.book().rows().get(set.book().ordinal(id)).source();
    return new Limit(
        name.substring(name.indexOf('-') + 1), unit, strict, lenient, strength, source);
  }

  /** One parameter and its two limits. */
  private record Limit(
      String parameter,
      String unit,
      double strict,
      double lenient,
      ToDoubleBiFunction<WaterStream, Integer> strength,
      String source) {

    UseAnswer answer(WaterStream outflow, int month) {
      if (outflow.volumeM3(month) <= 0) {
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
