package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Faults;
import org.marshlight.loop.Plan;
import org.marshlight.study.SensitivityStudy.FigureIndices;
import org.marshlight.study.SensitivityStudy.Index;

class SensitivityStudyTest {

  private static final String STRAW = "/compost/ingredients/0/freshKgPerYear";
  private static final String MANURE = "/compost/ingredients/1/freshKgPerYear";

  private static SensitivityRequest request(
      Plan plan, int points, List<String> outputs, Varied... vary) {
    return new SensitivityRequest(plan, outputs, List.of(vary), null, points, 2, 1);
  }

  private static SensitivityRequest heap(int points, Varied... vary) {
    return request(
        StudyFixture.HEAP, points, List.of("compost.finishedKg", "/compost/mix/freshKg"), vary);
  }

  private static SensitivityRequest tank(int points) {
    return request(StudyFixture.PLAN, points, List.of("digester.gasEnergyKWh"));
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    SensitivityRequest request = heap(16);
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void whatIsStatedToVaryMostComesFirst() {
    Varied straw = new Varied(STRAW, 50.0, 2000.0, null);
    SensitivityStudy study = StudyFixture.run(heap(32, straw), 2).study();
    FigureIndices compost = study.figures().get(0);
    assertThat(study.uncertainNumbers()).isGreaterThan(20);
    assertThat(compost.indices().get(0).number()).isEqualTo(STRAW);
    assertThat(compost.indices().get(0).total()).isGreaterThan(0.5);
    assertThat(study.screening().effects()).filteredOn(effect -> effect.kept()).hasSize(20);
    assertThat(compost.indices()).hasSize(20);
  }

  /**
   * The mix is the sum of what is put in, so that its variance is that of its parts: shares of 0.2
   * and 0.8 where one spreads twice as far as the other, and no more in all than alone.
   */
  @Test
  void firstAndTotalIndicesOfASumAreTheSharesOfItsParts() {
    Varied straw = new Varied(STRAW, 100.0, 200.0, null);
    Varied manure = new Varied(MANURE, 500.0, 700.0, null);
    FigureIndices mix = StudyFixture.run(heap(64, straw, manure), 2).study().figures().get(1);
    assertShare(mix.indices().get(0), MANURE, 0.8);
    assertShare(mix.indices().get(1), STRAW, 0.2);
    assertThat(mix.indices().subList(2, 20))
        .allSatisfy(i -> assertThat(i.total()).isCloseTo(0, within(1e-12)));
    assertThat(mix.sumOfFirst()).isCloseTo(1, within(0.05));
  }

  private static void assertShare(Index index, String number, double share) {
    assertThat(index.number()).isEqualTo(number);
    assertThat(index.first()).isCloseTo(share, within(0.05));
    assertThat(index.total()).isCloseTo(share, within(0.05));
    assertThat(index.first()).isBetween(index.firstLow() - 1e-9, index.firstHigh() + 1e-9);
    assertThat(index.total()).isBetween(index.totalLow() - 1e-9, index.totalHigh() + 1e-9);
  }

  @Test
  void aStudyThatIsTooLargeIsToldHowManyPointsFit() {
    assertThatThrownBy(() -> tank(16384).prepare())
        .isInstanceOfSatisfying(
            Faults.class,
            faults -> {
              assertThat(faults.list().get(0).pointer()).isEqualTo("/points");
              assertThat(faults.list().get(0).allowed()).isEqualTo("1024 points");
            });
    assertThat(tank(1024).prepare().cost().chainRuns()).isLessThanOrEqualTo(StudyCost.MOST);
  }
}
