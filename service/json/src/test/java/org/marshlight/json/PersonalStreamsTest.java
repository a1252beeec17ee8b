package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;

/** Whatever a plan sets of what people send to the drain, its books close or it is refused. */
class PersonalStreamsTest {

  private static final double CLOSED = 1e-9;

  private static final Set<String> REASONS =
      Set.of("feed.demand-below-organics", "feed.too-little-carbon");

  static Stream<CoefficientRow> coefficients() {
    return CoefficientBook.standard().rows().stream()
        .filter(row -> row.id().startsWith("personal-streams."));
  }

  @ParameterizedTest
  @MethodSource("coefficients")
  void bothEndsOfEachRangeCloseOrAreRefused(CoefficientRow row) {
    for (String sample : List.of("loop-hill-smallholding", "loop-garden-school")) {
      for (double end : new double[] {row.least(), row.low(), row.high(), row.most()}) {
        boolean usual = end == row.low() || end == row.high();
        try {
          assertThat(estimate(sample, row.id(), end).balances())
              .as("%s = %s", row.id(), end)
              .allSatisfy(
                  balance -> assertThat(balance.relativeResidual()).isLessThanOrEqualTo(CLOSED));
        } catch (Faults faults) {
          assertThat(faults.list()).extracting(Fault::code).isSubsetOf(REASONS);
          assertThat(usual && row.least() < row.low()).as("%s = %s", row.id(), end).isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"faeces", "urine", "greywater"})
  void organicMatterWithoutOxygenDemandIsRefused(String stream) {
    String id = "personal-streams." + stream + ".cod";
    assertThatThrownBy(() -> estimate("loop-hill-smallholding", id, 0))
        .isInstanceOfSatisfying(
            Faults.class,
            faults -> {
              Fault fault = faults.list().get(0);
              assertThat(fault.code()).isEqualTo("feed.demand-below-organics");
              assertThat(fault.pointer()).isEqualTo("/coefficients/" + id);
              assertThat(fault.rejected()).isEqualTo("0.0");
            });
  }

  /** Oxalic acid, C2H2O4 + O2/2 = 2 CO2 + H2O: 16.0 g of oxygen for 90.03 g (IUPAC masses). */
  @Test
  void theLeastDemandIsThatOfOxalicAcid() {
    assertThat(Stoichiometry.theoreticalCodKgKg(2, 2, 4, 0)).isCloseTo(0.1777, within(5e-5));
    assertThat(Stoichiometry.OXYGEN / (2 * Stoichiometry.CARBON)).isCloseTo(0.666, within(5e-4));
  }

  private static PlanEstimate estimate(String sample, String id, double value) {
    Plan plan = PlanDocument.read(SamplePlans.request(sample)).plan();
    TreeMap<String, Double> overrides =
        new TreeMap<>(plan.coefficients() == null ? new TreeMap<>() : plan.coefficients());
    overrides.put(id, value);
    Plan changed = RecordShape.changed(plan, "coefficients", overrides);
    Answer<PlanEstimate> answer =
        Marshlight.estimate(new Marshlight.Request(changed, Stage.LOOP, false, null));
    return answer.estimate();
  }
}
