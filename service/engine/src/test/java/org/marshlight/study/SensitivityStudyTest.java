package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Faults;
import org.marshlight.study.SensitivityStudy.FigureIndices;
import org.marshlight.study.SensitivityStudy.Index;

class SensitivityStudyTest {

  private static SensitivityRequest request(int points, int trajectories, Varied... vary) {
    return new SensitivityRequest(
        StudyFixture.PLAN,
        List.of("digester.gasEnergyKWh", "/digester/load/codKgPerDay"),
        List.of(vary),
        null,
        points,
        trajectories,
        1);
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    SensitivityRequest request = request(16, 2);
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void whatIsStatedToVaryMostComesFirst() {
    Varied fed = new Varied("/feeds/0/freshKgPerDay", 0.5, 12.0, null);
    SensitivityStudy study = StudyFixture.run(request(32, 2, fed), 2).study();
    FigureIndices load = study.figures().get(1);
    assertThat(load.indices().get(0).number()).isEqualTo("/feeds/0/freshKgPerDay");
    assertThat(load.indices().get(0).total()).isGreaterThan(0.5);
    assertThat(study.screening().effects()).filteredOn(effect -> effect.kept()).hasSize(20);
    assertThat(load.indices()).hasSize(20);
  }

  /** COD of feeds and people add up, so that nothing but single numbers carries its variance. */
  @Test
  void firstAndTotalIndicesOfALoadAreTheSame() {
    Varied fed = new Varied("/feeds/0/freshKgPerDay", 2.0, 4.0, null);
    FigureIndices load = StudyFixture.run(request(128, 2, fed), 2).study().figures().get(1);
    for (Index index : load.indices()) {
      assertThat(index.first()).as(index.number()).isCloseTo(index.total(), within(0.12));
      assertThat(index.total()).isBetween(index.totalLow() - 1e-9, index.totalHigh() + 1e-9);
    }
    assertThat(load.sumOfFirst()).isCloseTo(1, within(0.25));
  }

  @Test
  void aStudyThatIsTooLargeIsToldHowManyPointsFit() {
    assertThatThrownBy(() -> request(16384, 2).prepare())
        .isInstanceOfSatisfying(
            Faults.class,
            faults -> {
              assertThat(faults.list().get(0).pointer()).isEqualTo("/points");
              assertThat(faults.list().get(0).allowed()).isEqualTo("1024 points");
            });
    assertThat(request(1024, 2).prepare().cost().chainRuns()).isLessThanOrEqualTo(StudyCost.MOST);
  }
}
