package org.marshlight.decision;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.Meaning;
import org.marshlight.crop.CropEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.loop.Balance;
import org.marshlight.loop.Closure;
import org.marshlight.loop.Flow;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Stage;
import org.marshlight.loop.StageWorking;
import org.marshlight.wetland.WetlandEstimate;

/**
 * The figures of a plan; parts that the plan does not have, or that were not asked for, are absent.
 *
 * @param digester the tank
 * @param wetland the beds
 * @param crop what grows on them
 * @param ethanol fuel alcohol
 * @param compost the heap
 * @param money the whole plan in money
 * @param greenhouseGas the plan against the present system
 * @param materials what is to be bought and dug, by geometry alone
 */
@Meaning("The figures of a plan; parts that it does not have are absent.")
public record PlanEstimate(
    @Meaning("The tank: temperature, gas, stability, sludge, effluent.") DigesterEstimate digester,
    @Meaning("The beds: quality of the outflow, water, adequacy.") WetlandEstimate wetland,
    @Meaning("The plants of the beds: biomass, starch, nutrients.") CropEstimate crop,
    @Meaning("Fuel alcohol: litres, heat, net energy, stillage.") EthanolEstimate ethanol,
    @Meaning("The heap: mix, heat, hygiene, nutrients returned.") CompostEstimate compost,
    @Meaning("What crossed the border of the loop.") @Size(max = 20) List<Balance> balances,
    @Meaning("Every flow, for a diagram.") @Size(max = 2000) List<Flow> flows,
    @Meaning("How closed the loop is.") @Size(max = 20) List<Closure> closure,
    @Meaning("What is worth building.") @Size(max = 20) List<Verdict> verdicts,
    @Meaning("The whole plan in money; absent without costs.") MoneyEstimate money,
    @Meaning("Greenhouse gases of the plan against the present system; absent without a tank.")
        GreenhouseGasEstimate greenhouseGas,
    @Meaning("Energy returned on energy spent.") EnergyReturnEstimate energyReturn,
    @Meaning("What glass, money and wastes would give otherwise.") @Size(max = 10)
        List<Alternative> alternatives,
    @Meaning("What is to be bought and dug, by geometry alone: no structural design.")
        @Size(max = 60)
        List<MaterialNeeded> materials,
    @Meaning("Hours of work.") WorkEstimate labour,
    @Meaning("The year's work and watch-points.") @Size(max = 60) List<CalendarEntry> calendar,
    @Meaning("The steps of each stage, where asked for.") @Size(max = 10)
        List<StageWorking> working) {

  /** All figures of a chain with what is decided of it. */
  public static PlanEstimate whole(LoopRun run, Decision decision, List<StageWorking> working) {
    PlanEstimate figures = undecided(run);
    return new PlanEstimate(
        figures.digester,
        figures.wetland,
        figures.crop,
        figures.ethanol,
        figures.compost,
        figures.balances,
        figures.flows,
        figures.closure,
        decision.verdicts(),
        decision.money(),
        decision.greenhouseGas(),
        decision.energyReturn(),
        decision.alternatives(),
        decision.materials(),
        decision.work(),
        decision.calendar(),
        working);
  }

  /**
   * The figures of a whole chain of which nothing is decided: no verdicts and what goes with them.
   */
  public static PlanEstimate undecided(LoopRun run) {
    return new PlanEstimate(
        run.digester() == null ? null : run.digester().estimate(),
        run.wetland() == null ? null : run.wetland().estimate(),
        run.crop() == null ? null : run.crop().estimate(),
        run.ethanol() == null ? null : run.ethanol().estimate(),
        run.compost() == null ? null : run.compost().estimate(),
        run.balances(),
        run.flows(),
        run.closure(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** The figures of one stage of a chain. */
  public static PlanEstimate of(Stage stage, LoopRun run, List<StageWorking> working) {
    return new PlanEstimate(
        stage == Stage.DIGESTER ? run.digester().estimate() : null,
        stage == Stage.WETLAND ? run.wetland().estimate() : null,
        stage == Stage.CROP ? run.crop().estimate() : null,
        stage == Stage.ETHANOL ? run.ethanol().estimate() : null,
        stage == Stage.COMPOST ? run.compost().estimate() : null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        working);
  }
}
