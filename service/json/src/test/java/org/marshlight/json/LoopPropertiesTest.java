package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.Balance;
import org.marshlight.loop.Stage;

/** What must hold of every legal plan; a failure prints the seed and the plan as a request. */
class LoopPropertiesTest {

  private static final long SEED = 731;
  private static final int PLANS = 200;

  private static final Set<String> QUANTITIES =
      Set.of("water", "cod", "carbon", "nitrogen", "phosphorus", "potassium", "energy");

  @Test
  void everyLegalPlanIsAnsweredBalancedAndFinite() throws IOException {
    RandomPlans plans = new RandomPlans(SEED);
    int answered = 0;
    for (int run = 0; run < PLANS; run++) {
      ObjectNode plan = plans.next();
      String request = ContractJson.mapper().writeValueAsString(plan);
      if (holds(request, "seed " + SEED + ", run " + run + ", request " + request)) {
        answered++;
      }
    }
    assertThat(answered).isGreaterThan(PLANS / 2);
  }

  /** Plans that once failed. */
  @ParameterizedTest
  @ValueSource(strings = {"found-no-water-in-months-off", "found-returned-tops-settle"})
  void plansThatWereFoundHold(String name) throws IOException {
    try (InputStream plan = LoopPropertiesTest.class.getResourceAsStream("/" + name + ".json")) {
      assertThat(holds(new String(plan.readAllBytes(), StandardCharsets.UTF_8), name)).isTrue();
    }
  }

  /** Whether a plan is answered; what must hold of the answer is asserted. */
  private static boolean holds(String request, String as) throws IOException {
    Answer<PlanEstimate> answer = answer(request);
    if (answer == null) {
      return false;
    }
    assertBalanced(answer.estimate(), as);
    assertPhysical(answer.estimate(), as);
    assertThat(answer.estimate().flows())
        .as(as)
        .allSatisfy(flow -> assertThat(flow.perYear()).isNotNegative());
    byte[] written = ContractJson.write(answer);
    assertFinite(ContractJson.mapper().readTree(written), "", as);
    assertThat(ContractJson.write(answer(request))).as(as).isEqualTo(written);
    assertThat(answer.cautions()).as(as).hasSizeGreaterThanOrEqualTo(4);
    return true;
  }

  /** The answer, or null where the plan sends its tank too much or next to nothing. */
  private static Answer<PlanEstimate> answer(String request) {
    PlanDocument document = PlanDocument.read(request.getBytes(StandardCharsets.UTF_8));
    try {
      return Marshlight.estimate(
          new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
    } catch (Faults faults) {
      List<String> codes = faults.list().stream().map(fault -> fault.code()).toList();
      assertThat(codes)
          .as(request)
          .isSubsetOf("loop.tank-overrun", "loop.tank-never-fills", "wetland.too-deep");
      return null;
    }
  }

  private static void assertBalanced(PlanEstimate estimate, String as) {
    assertThat(estimate.balances().stream().map(Balance::quantity).collect(Collectors.toSet()))
        .as(as)
        .isEqualTo(QUANTITIES);
    for (Balance balance : estimate.balances()) {
      assertThat(balance.relativeResidual())
          .as("%s of %s: %s", balance.quantity(), balance.scope(), as)
          .isLessThanOrEqualTo(1e-9);
    }
  }

  private static void assertPhysical(PlanEstimate estimate, String as) {
    DigesterEstimate.Annual digester = estimate.digester().annual();
    assertThat(digester.methaneProducedNm3())
        .as(as)
        .isLessThanOrEqualTo(digester.methaneCeilingNm3() * (1 + 1e-9));
    assertThat(digester.methaneDissolvedNm3() + digester.methaneLeakedNm3() + digester.methaneNm3())
        .as(as)
        .isCloseTo(
            digester.methaneProducedNm3(),
            org.assertj.core.api.Assertions.within(
                1e-9 * Math.max(1, digester.methaneProducedNm3())));
    if (estimate.ethanol() != null) {
      assertThat(estimate.ethanol().annual().ethanolL()).as(as).isNotNegative();
    }
  }

  private static void assertFinite(JsonNode node, String path, String as) {
    if (node.isTextual()) {
      assertThat(node.textValue()).as("%s: %s", path, as).isNotIn("NaN", "Infinity", "-Infinity");
    }
    node.fields().forEachRemaining(e -> assertFinite(e.getValue(), path + "/" + e.getKey(), as));
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        assertFinite(node.get(i), path + "/" + i, as);
      }
    }
  }
}
