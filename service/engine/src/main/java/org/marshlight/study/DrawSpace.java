package org.marshlight.study;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Fault;
import org.marshlight.decision.GreenhouseGasEstimate;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Distribution;
import org.marshlight.loop.Plan;
import org.marshlight.statistics.Spread;

/**
 * The uncertain numbers of a study, one coordinate each.
 *
 * @param base the plan as it is
 * @param factors the uncertain numbers
 */
record DrawSpace(BaseRun base, List<Factor> factors) {

  /** Departures of the climate beyond this many standard deviations are left out. */
  private static final double REACH = 4;

  private static final double PERCENT = 100;

  /**
   * Every coefficient that a plan uses and did not set itself, and what is stated beside.
   *
   * @param base the plan as it is
   * @param whole whether coefficients on which decisions rest count too
   * @param vary stated ranges, filled
   * @param climate stated uncertainty of the climate; null if it is certain
   * @param faults receives what makes no sense
   */
  static DrawSpace of(
      BaseRun base, boolean whole, List<Varied> vary, ClimateSpread climate, List<Fault> faults) {
    Map<String, Factor> factors = new LinkedHashMap<>();
    addRead(base.outcome().run().assumptions(), factors);
    if (whole) {
      addRead(base.outcome().decision().assumptions(), factors);
      addDisplacedFuel(base, factors);
    }
    for (int i = 0; i < vary.size(); i++) {
      Factor factor = VariedFactor.of(vary.get(i), base.plan(), "/vary/" + i, faults);
      if (factor != null) {
        factors.put(factor.id(), factor);
      }
    }
    if (climate != null) {
      addClimate(climate, base.plan(), factors, faults);
    }
    return new DrawSpace(base, List.copyOf(factors.values()));
  }

  private static void addRead(List<Assumption> assumptions, Map<String, Factor> factors) {
    for (Assumption assumption : assumptions) {
      if (!assumption.code().equals("override")) {
        CoefficientBook.standard().find(assumption.id()).ifPresent(row -> add(row, factors));
      }
    }
  }

  /** Decisions read the row of the one fuel that the gas takes the place of. */
  private static void addDisplacedFuel(BaseRun base, Map<String, Factor> factors) {
    GreenhouseGasEstimate gases = base.outcome().decision().greenhouseGas();
    if (gases == null) {
      return;
    }
    String fuel = "fuels." + gases.displacedFuel() + ".";
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      if (row.id().startsWith(fuel) && !base.set().isOverridden(row.id())) {
        add(row, factors);
      }
    }
  }

  private static void add(CoefficientRow row, Map<String, Factor> factors) {
    if (row.distribution() != Distribution.FIXED && row.low() < row.high()) {
      Factor factor = Factor.OfCoefficient.of(row);
      factors.putIfAbsent(factor.id(), factor);
    }
  }

  private static void addClimate(
      ClimateSpread climate, Plan plan, Map<String, Factor> factors, List<Fault> faults) {
    if (plan.site().hours() != null) {
      faults.add(Fault.of("study.climate-of-hours", "/climate", null, "nothing beside hours"));
      return;
    }
    addShift(ClimateShift.AIR_TEMPERATURE, climate.airTemperatureK(), 1, plan, factors);
    addShift(ClimateShift.SOLAR, climate.solarPercent(), PERCENT, plan, factors);
    addShift(ClimateShift.RAIN, climate.rainPercent(), PERCENT, plan, factors);
    addShift(ClimateShift.WIND, climate.windPercent(), PERCENT, plan, factors);
  }

  private static void addShift(
      ClimateShift shift, Double stated, double scale, Plan plan, Map<String, Factor> factors) {
    if (stated == null || stated == 0 || !shift.moves(plan)) {
      return;
    }
    double deviation = stated / scale;
    Spread spread =
        new Spread.Normal(shift.none(), deviation)
            .within(
                shift.legal(plan, shift.none() - REACH * deviation),
                shift.legal(plan, shift.none() + REACH * deviation));
    factors.put(shift.id(), new Factor.OfClimate(shift, spread));
  }

  /** The same space with some of its coordinates alone. */
  DrawSpace only(List<Factor> kept) {
    return new DrawSpace(base, List.copyOf(kept));
  }

  /** The place of a number among the coordinates; -1 if it is none of them. */
  int place(String id) {
    for (int i = 0; i < factors.size(); i++) {
      if (factors.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Runs the plan at a point.
   *
   * @param point a probability for each coordinate
   * @param sites sites of runs that may have the same weather
   * @return the run; null if the numbers drawn have no answer together
   */
  Outcome run(double[] point, Sites sites) {
    Plan plan = base.plan();
    int[] ordinals = new int[factors.size()];
    double[] drawn = new double[factors.size()];
    int count = 0;
    for (int i = 0; i < factors.size(); i++) {
      double value = factors.get(i).spread().quantile(point[i]);
      Factor factor = factors.get(i);
      if (factor instanceof Factor.OfCoefficient coefficient) {
        ordinals[count] = coefficient.ordinal();
        drawn[count++] = value;
      } else if (factor instanceof Factor.OfField field) {
        plan = field.field().with(plan, value);
      } else if (factor instanceof Factor.OfClimate climate) {
        plan = climate.shift().apply(plan, value);
      }
    }
    CoefficientSet set =
        base.set().drawn(Arrays.copyOf(ordinals, count), Arrays.copyOf(drawn, count));
    return PossibleRun.of(sites, plan, set);
  }
}
