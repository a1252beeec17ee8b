package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.loop.Stage;
import org.marshlight.safety.Caution;

/** What a verdict names as the hazards of a part are the cautions that go when the part goes. */
class HazardsOfPartsTest {

  /** Sections that go with a part; glass leaves earth behind. */
  private static final Map<Component, List<String>> SECTIONS =
      Map.of(
          Component.GAS_CAPTURE, List.of("gas"),
          Component.GLASS, List.of("cover"),
          Component.CO_FEEDING, List.of("feeds"),
          Component.BEDS, List.of("beds", "fuel"),
          Component.FUEL_ALCOHOL, List.of("fuel"),
          Component.COMPOST, List.of("compost"));

  static Stream<String> samples() {
    return SamplePlans.names().stream();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void hazardsAreTheCautionsThatThePartBrings(String sample) throws IOException {
    Answer<PlanEstimate> whole = SamplePlans.answer(sample);
    for (Verdict verdict : whole.estimate().verdicts()) {
      if (SECTIONS.containsKey(verdict.component())) {
        Set<String> brought = ids(whole.cautions());
        brought.removeAll(ids(without(sample, verdict.component()).cautions()));
        assertThat(verdict.difference().hazards())
            .as("%s %s", sample, verdict.component())
            .containsExactlyInAnyOrderElementsOf(brought);
      }
    }
  }

  private static Answer<PlanEstimate> without(String sample, Component component)
      throws IOException {
    ObjectNode plan = (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request(sample));
    SECTIONS.get(component).forEach(plan::remove);
    if (component == Component.GLASS) {
      plan.putObject("cover").put("kind", "earth");
    }
    PlanDocument document = PlanDocument.read(plan.toString().getBytes(StandardCharsets.UTF_8));
    return Marshlight.estimate(
        new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
  }

  private static Set<String> ids(List<Caution> cautions) {
    return cautions.stream().map(Caution::id).collect(Collectors.toCollection(TreeSet::new));
  }
}
