package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.marshlight.Marshlight;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.Stage;

/** No month uses, needs or lets go a negative amount of gas, and the gas of the year closes. */
class GasOfMonthsTest {

  private static final long SEED = 20261201;
  private static final int PLANS = 200;

  @Test
  void noSampleHasAMonthOfNegativeGas() {
    for (String name : SamplePlans.names()) {
      assertGas(SamplePlans.answer(name).estimate(), name);
    }
  }

  @Test
  void noRandomPlanThatWarmsItsTankHasAMonthOfNegativeGas() throws IOException {
    RandomPlans plans = new RandomPlans(SEED);
    Random random = new Random(SEED);
    int answered = 0;
    for (int run = 0; run < PLANS; run++) {
      ObjectNode plan = warmed(plans.next(), random);
      byte[] request = ContractJson.mapper().writeValueAsBytes(plan);
      PlanDocument document = PlanDocument.read(request);
      try {
        assertGas(
            Marshlight.estimate(
                    new Marshlight.Request(
                        document.plan(), Stage.DIGESTER, false, document.sha256()))
                .estimate(),
            "seed " + SEED + ", run " + run + ", request " + plan);
        answered++;
      } catch (Faults faults) {
        assertThat(faults.list())
            .as("run %s", run)
            .allSatisfy(fault -> assertThat(fault.code()).isEqualTo("loop.tank-overrun"));
      }
    }
    assertThat(answered).isGreaterThan(PLANS / 2);
  }

  /** The plan with months off, a small store and the surplus warming the tank. */
  private static ObjectNode warmed(ObjectNode plan, Random random) {
    for (String part : List.of("beds", "fuel", "compost", "waterUse", "diversion", "routes")) {
      plan.remove(part);
    }
    ObjectNode gas = plan.putObject("gas");
    gas.put("storeM3", 2 * random.nextDouble());
    ArrayNode off = gas.putArray("monthsOff");
    if (random.nextBoolean()) {
      off.add(1 + random.nextInt(12));
    }
    ArrayNode uses = gas.putArray("uses");
    uses.addObject().put("use", "cooking").put("hoursPerDay", 3 * random.nextDouble());
    uses.addObject().put("use", "tank-heating").put("setPointC", 15 + 25 * random.nextDouble());
    return plan;
  }

  private static void assertGas(PlanEstimate estimate, String as) {
    if (estimate.digester() == null) {
      return;
    }
    DigesterEstimate.Monthly monthly = estimate.digester().monthly();
    assertThat(monthly.gasEnergyKWh()).as(as).allSatisfy(kWh -> assertThat(kWh).isNotNegative());
    assertThat(monthly.gasUsedKWh()).as(as).allSatisfy(kWh -> assertThat(kWh).isNotNegative());
    assertThat(monthly.gasSurplusKWh()).as(as).allSatisfy(kWh -> assertThat(kWh).isNotNegative());
    // a small store ends its year as full as it began it
    assertThat(sum(monthly.gasUsedKWh()) + sum(monthly.gasSurplusKWh()))
        .as(as)
        .isCloseTo(sum(monthly.gasEnergyKWh()), withinPercentage(1e-6));
  }

  private static double sum(List<Double> months) {
    return months.stream().mapToDouble(Double::doubleValue).sum();
  }
}
