package org.marshlight.decision;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.Balance;
import org.marshlight.loop.Closure;
import org.marshlight.loop.Flow;
import org.marshlight.loop.StageWorking;

/**
 * The figures of a plan; parts that the plan does not have, or that were not asked for, are absent.
 *
 * @param digester the tank
 * @param balances what crossed the border of the loop
 * @param flows every flow, for a diagram
 * @param closure how closed the loop is
 * @param verdicts what is worth building
 * @param working the steps of each stage, where asked for
 */
@Meaning("The figures of a plan; parts that it does not have are absent.")
public record PlanEstimate(
    @Meaning("The tank: temperature, gas, stability, sludge, effluent.") DigesterEstimate digester,
    @Meaning("What crossed the border of the loop.") @Size(max = 20) List<Balance> balances,
    @Meaning("Every flow, for a diagram.") @Size(max = 2000) List<Flow> flows,
    @Meaning("How closed the loop is.") @Size(max = 20) List<Closure> closure,
    @Meaning("What is worth building.") @Size(max = 20) List<Verdict> verdicts,
    @Meaning("The steps of each stage, where asked for.") @Size(max = 10)
        List<StageWorking> working) {}
