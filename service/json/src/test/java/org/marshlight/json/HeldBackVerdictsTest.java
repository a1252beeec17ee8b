package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.Answer;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.compost.Hygiene;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;

/**
 * What the models do not see yet is said in a severe notice, and no verdict rests a yes on it. All
 * plans are invented.
 */
class HeldBackVerdictsTest {

  private static final String COLD_BEDS =
      """
      {"site": {"climate": {"id": "minneapolis-saint-paul"}},
       "people": {"count": 2},
       "tank": {"liquidVolumeM3": 4},
       "waterUse": "soil-absorption",
       "beds": [
         {"kind": "free-water-surface", "areaM2": 60, "depthM": %s, "plant": "broadleaf-cattail"%s},
         {"kind": "horizontal-subsurface", "areaM2": 10, "plant": "broadleaf-cattail",
          "mulchM": 0.3}]}
      """;

  private static final String HEAP =
      """
      {"site": {"climate": {"id": "gainesville"}},
       "people": {"count": 12},
       "tank": {"liquidVolumeM3": 6},
       "routes": {"sludge": "compost"},
       "compost": {"ingredients": [{"ingredient": "straw", "freshKgPerYear": %s}]}}
      """;

  private static final String GARDEN =
      """
      {"site": {"climate": {"id": "gainesville"}},
       "people": {"count": 4},
       "tank": {"liquidVolumeM3": 4},
       "waterUse": "%s",
       "beds": [{"areaM2": 25}],
       "compost": {"ingredients": [{"ingredient": "horse-manure", "freshKgPerYear": 4000},
                                   {"ingredient": "straw", "freshKgPerYear": 800}]}}
      """;

  private static Answer<PlanEstimate> answer(String plan, Object... values) {
    return SamplePlans.answerTo(String.format(plan, values).getBytes(StandardCharsets.UTF_8));
  }

  private static Verdict verdict(Answer<PlanEstimate> answer, Component component, String bed) {
    return answer.estimate().verdicts().stream()
        .filter(each -> each.component() == component && (bed == null || bed.equals(each.bed())))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> severe(Answer<PlanEstimate> answer) {
    return answer.notices().stream()
        .filter(notice -> notice.severity() == Notice.Severity.SEVERE)
        .map(Notice::code)
        .toList();
  }

  /** Ice of more than about 75 % of the depth makes an open bed questionable: evidence, wetland. */
  @Test
  void openWaterThatFreezesToItsFloorIsNotWorthAYes() {
    Answer<PlanEstimate> frozen = answer(COLD_BEDS, "0.3", "");
    assertThat(severe(frozen)).containsExactly("wetland.frozen");
    Verdict beds = verdict(frozen, Component.BEDS, null);
    assertThat(beds.measure().value()).isGreaterThan(beds.measure().yesFrom());
    assertThat(beds.answer()).isEqualTo(Worth.MARGINAL);
    assertThat(beds.heldBackBy()).contains("decision.beds-freeze");
    Verdict open = verdict(frozen, Component.BED, "bed-1");
    assertThat(open.answer()).isNotEqualTo(Worth.YES);
    assertThat(open.heldBackBy()).containsExactly("decision.bed-freezes");
    assertThat(verdict(frozen, Component.BED, "bed-2").heldBackBy()).isEmpty();
    assertThat(frozen.estimate().wetland().beds().get(0).ice().depthFraction()).isEqualTo(1);
    assertThat(frozen.estimate().wetland().beds().get(1).ice()).isNull();
  }

  @Test
  void iceHoldsNoVerdictBackWhereTheWaterIsLedPastIt() {
    Answer<PlanEstimate> passed = answer(COLD_BEDS, "0.3", ", \"monthsOff\": [12, 1, 2, 3, 4]");
    assertThat(severe(passed)).isEmpty();
    assertThat(passed.notices()).extracting(Notice::code).contains("wetland.ice");
    assertThat(verdict(passed, Component.BEDS, null).heldBackBy())
        .doesNotContain("decision.beds-freeze");
  }

  @Test
  void deepOpenWaterIsNotHeldBack() {
    Answer<PlanEstimate> deep = answer(COLD_BEDS, "1.2", "");
    assertThat(severe(deep)).isEmpty();
    assertThat(deep.estimate().wetland().beds().get(0).ice().depthFraction()).isBetween(0.1, 0.75);
  }

  /** Cooperband 2002: a mix of 40 to 65 % moisture is acceptable. */
  @Test
  void noRuleOnHeatIsMetByAWetHeapHoweverHotItsModelGets() {
    Answer<PlanEstimate> wet = answer(HEAP, "60");
    CompostEstimate heap = wet.estimate().compost();
    assertThat(heap.mix().moistureFraction()).isGreaterThan(0.65);
    assertThat(heap.hygiene().tooWet()).isTrue();
    assertThat(heap.hygiene().significantReduction()).isEqualTo(Hygiene.NOT_MET);
    assertThat(heap.hygiene().furtherReduction()).isEqualTo(Hygiene.NOT_MET);
    assertThat(heap.hygiene().storageWantingDays()).isGreaterThanOrEqualTo(365);
    assertThat(severe(wet)).containsExactly("compost.too-wet");
    assertThat(wet.notices())
        .extracting(Notice::code)
        .doesNotContain("compost.not-hot-long-enough");
    Verdict compost = verdict(wet, Component.COMPOST, null);
    assertThat(compost.answer()).isNotEqualTo(Worth.YES);
    assertThat(compost.heldBackBy()).containsExactly("decision.compost-too-wet");
  }

  @Test
  void aHeapWithEnoughStrawIsNotHeldBack() {
    Answer<PlanEstimate> moist = answer(HEAP, "1500");
    assertThat(moist.estimate().compost().mix().moistureFraction()).isLessThan(0.65);
    assertThat(severe(moist)).isEmpty();
    assertThat(verdict(moist, Component.COMPOST, null).heldBackBy()).isEmpty();
  }

  @Test
  void nutrientsThatIrrigateTheGardenHoldTheVerdictOnReturnedOnesBack() {
    Answer<PlanEstimate> irrigated = answer(GARDEN, "irrigation");
    assertThat(severe(irrigated)).containsExactly("decision.irrigation-not-counted");
    Verdict compost = verdict(irrigated, Component.COMPOST, null);
    assertThat(compost.measure().value()).isGreaterThan(compost.measure().yesFrom());
    assertThat(compost.answer()).isEqualTo(Worth.MARGINAL);
    assertThat(compost.heldBackBy()).containsExactly("decision.compost-beside-irrigation");
  }

  @Test
  void nutrientsThatSoakAwayHoldNoVerdictBack() {
    Answer<PlanEstimate> soaked = answer(GARDEN, "soil-absorption");
    assertThat(severe(soaked)).isEmpty();
    assertThat(verdict(soaked, Component.COMPOST, null).answer()).isEqualTo(Worth.YES);
  }
}
