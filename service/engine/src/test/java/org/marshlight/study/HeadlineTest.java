package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.PlanEstimate;

class HeadlineTest {

  private static final Outcome BASE = BaseRun.of(StudyFixture.PLAN).outcome();

  @Test
  void everyHeadlineNamesAFigureOfTheContract() {
    for (Headline headline : Headline.all()) {
      Class<?> type = PlanEstimate.class;
      RecordShape.Field field = null;
      for (String name : headline.pointer().substring(1).split("/")) {
        field = RecordShape.of(type.asSubclass(Record.class)).field(name).orElseThrow();
        type = field.type();
      }
      assertThat(field.quantity()).as(headline.name()).isPresent();
      boolean months = headline.group() == Headline.Group.MONTHLY;
      boolean reduced = headline.of() != Figure.Reduction.VALUE;
      assertThat(field.monthly()).as(headline.name()).isEqualTo(months || reduced);
    }
  }

  @Test
  void theMethodPageListsEveryHeadline() throws IOException {
    String page =
        Files.readString(Path.of(System.getProperty("repository"), "docs/methods/studies.md"));
    for (Headline headline : Headline.all()) {
      assertThat(page).contains("`" + headline.name()).contains("`" + headline.pointer() + "`");
    }
  }

  @Test
  void theHeadlinesOfAPlanAreThoseOfItsParts() {
    List<String> names = Figures.annual(BASE).list().stream().map(Figure::name).toList();
    assertThat(names).contains("digester.gasEnergyKWh", "wetland.worstMonthBod5MgL");
    assertThat(names).noneMatch(name -> name.startsWith("ethanol."));
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void aPointerToMonthsFollowsEachOfThem() {
    Figures figures = Figures.of(List.of("/digester/monthly/methaneNm3"), BASE, "/outputs");
    assertThat(figures.list()).hasSize(12);
    assertThat(figures.values(BASE)[3])
        .isEqualTo(BASE.run().digester().estimate().monthly().methaneNm3().get(3));
    assertThat(figures.list().get(3).error()).isEqualTo(StageError.DIGESTER);
  }

  @Test
  void theWorstMonthIsTheWorst() {
    List<Fault> faults = new ArrayList<>();
    Figure coldest = Figures.one("digester.coldestMonthC", BASE, "/outputs/0", faults);
    double least =
        BASE.run().digester().estimate().monthly().liquorTemperatureC().stream()
            .mapToDouble(Double::doubleValue)
            .min()
            .orElseThrow();
    assertThat(faults).isEmpty();
    assertThat(coldest.value(BASE)).isEqualTo(least);
  }

  @Test
  void aFigureOfAListIsFollowedInItsOwnUnit() {
    Figures figures = Figures.of(List.of("/balances/0/in"), BASE, "/outputs");
    assertThat(figures.list().get(0).unit()).isEqualTo(BASE.estimate().balances().get(0).unit());
    assertThat(figures.runsEach()).isGreaterThan(1);
  }

  @Test
  void pointersToNothingAreToldWithWhatIsNearest() {
    assertThat(faults("digester.gasEnergy"))
        .extracting(Fault::code)
        .containsExactly("study.unknown-figure");
    assertThat(faults("/digester/annual/methane"))
        .singleElement()
        .satisfies(f -> assertThat(f.params()).containsEntry("nearest", "methaneNm3"));
    assertThat(faults("/ethanol/annual/ethanolL"))
        .extracting(Fault::code)
        .containsExactly("study.pointer-to-nothing");
    assertThat(faults("/digester/annual"))
        .extracting(Fault::code)
        .containsExactly("study.no-number");
    assertThat(faults("/digester/monthly/methaneNm3/12"))
        .extracting(Fault::pointer)
        .containsExactly("/outputs/0");
    assertThat(faults("ethanol.ethanolL")).hasSize(1);
  }

  private static List<Fault> faults(String word) {
    List<Fault> faults = new ArrayList<>();
    assertThatThrownBy(() -> Figures.of(List.of(word), BASE, "/outputs"))
        .isInstanceOfSatisfying(Faults.class, thrown -> faults.addAll(thrown.list()));
    return faults;
  }
}
