package org.marshlight.loop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.RecordShape;

/** Ids that no coefficient has are all reported, and only a few are answered with a suggestion. */
class UnknownCoefficientsTest {

  private static List<Fault> faults(Map<String, Double> coefficients) {
    RecordShape shape = RecordShape.of(Plan.class);
    Object[] values = new Object[shape.names().size()];
    values[shape.names().indexOf("coefficients")] = coefficients;
    return PlanCheck.faults((Plan) shape.create(values)).stream()
        .filter(fault -> fault.pointer().startsWith("/coefficients"))
        .toList();
  }

  @Test
  void aMisspeltOneIsAnsweredWithTheNearest() {
    assertThat(faults(Map.of("digester.leak-shore", 1.0)))
        .singleElement()
        .satisfies(fault -> assertThat(fault.detail()).contains("digester.leak-share"));
  }

  @Test
  void noneIsNearToANameThatIsTooLong() {
    assertThat(faults(Map.of("x".repeat(120), 1.0)))
        .singleElement()
        .satisfies(
            fault -> assertThat(fault.detail()).isEqualTo("There is no coefficient of that id."));
  }

  @Test
  void ofManyOnlyTheFirstAreAnsweredWithTheNearest() {
    Map<String, Double> many = new TreeMap<>();
    for (int i = 0; i < 100; i++) {
      many.put("digester.leak-" + i, 1.0);
    }
    assertThat(faults(many)).hasSize(100);
    assertThat(faults(many))
        .filteredOn(fault -> fault.code().equals("loop.unknown-coefficient"))
        .hasSize(20);
  }
}
