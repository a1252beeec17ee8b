package org.marshlight.study;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Fault;
import org.marshlight.decision.GreenhouseGasEstimate;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Distribution;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;
import org.marshlight.statistics.Spread;

/**
 * The uncertain numbers of a study, one coordinate each.
 *
 * @param base the plan as it is
 * @param stage as far as which plans are run
 * @param factors the uncertain numbers
 */
record DrawSpace(BaseRun base, Stage stage, List<Factor> factors) {

  /** Departures of the climate beyond this many standard deviations are left out. */
  private static final double REACH = 4;

  private static final double PERCENT = 100;

  private static final String SPARED_ELECTRICITY = "decision.gases-displaced-electricity";

  /**
   * Every coefficient that a plan uses for some figures and did not set itself, and what is stated
   * beside.
   *
   * @param base the plan as it is
   * @param figures what is followed
   * @param vary stated ranges, filled
   * @param climate stated uncertainty of the climate; null if it is certain
   * @param faults receives what makes no sense
   */
  static DrawSpace of(
      BaseRun base, Figures figures, List<Varied> vary, ClimateSpread climate, List<Fault> faults) {
    Map<String, Factor> factors = new LinkedHashMap<>();
    Extent extent = Extent.of(base, figures);
    addRead(extent.outcome().run().assumptions(), factors);
    if (figures.whole()) {
      addRead(base.outcome().decision().assumptions(), factors);
      addFuels(base, factors);
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
    return new DrawSpace(base, extent.stage(), List.copyOf(factors.values()));
  }

  private static void addRead(List<Assumption> assumptions, Map<String, Factor> factors) {
    for (Assumption assumption : assumptions) {
      if (!assumption.code().equals("override")) {
        CoefficientBook.standard().find(assumption.id()).ifPresent(row -> add(row, factors));
      }
    }
  }

  /**
   * Decisions read the rows of the fuel that the gas takes the place of, of electricity where lamps
   * or engines spare it and, where there is a still, of what drives it.
   */
  private static void addFuels(BaseRun base, Map<String, Factor> factors) {
    Set<String> fuels = new LinkedHashSet<>();
    GreenhouseGasEstimate gases = base.outcome().decision().greenhouseGas();
    if (gases != null) {
      fuels.add(gases.displacedFuel());
      if (sparesElectricity(gases)) {
        fuels.add(HeatSource.ELECTRICITY);
      }
    }
    if (base.outcome().run().ethanol() != null) {
      fuels.add(base.outcome().run().ethanol().estimate().heat().source());
      fuels.add(HeatSource.ELECTRICITY);
    }
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      boolean read = fuels.stream().anyMatch(fuel -> row.id().startsWith("fuels." + fuel + "."));
      if (read && !base.set().isOverridden(row.id())) {
        add(row, factors);
      }
    }
  }

  private static boolean sparesElectricity(GreenhouseGasEstimate gases) {
    return gases.lines().stream().anyMatch(line -> line.code().equals(SPARED_ELECTRICITY));
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
    return new DrawSpace(base, stage, List.copyOf(kept));
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
    return PossibleRun.of(sites, plan, set, stage);
  }
}
