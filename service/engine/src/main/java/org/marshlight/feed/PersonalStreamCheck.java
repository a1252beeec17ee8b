package org.marshlight.feed;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;

/**
 * Rules that join several coefficients of what a person sends to the drain; each coefficient alone
 * has already been found legal. A tank takes organic matter apart in proportion to its oxygen
 * demand, so matter that no compound could hold would leave the books open.
 */
public final class PersonalStreamCheck {

  private static final List<String> STREAMS = List.of("faeces", "urine", "greywater");

  /** Oxalic acid, C2H2O4, is the organic compound with the least oxygen demand. */
  private static final int OXALIC_CARBON = 2;

  private static final double LEAST_COD_PER_VOLATILE =
      Stoichiometry.theoreticalCodKgKg(OXALIC_CARBON, 2, 4, 0);

  /** Half a molecule of oxygen, which is one atom, for its two atoms of carbon. */
  private static final double LEAST_COD_PER_CARBON =
      Stoichiometry.OXYGEN / (OXALIC_CARBON * Stoichiometry.CARBON);

  private PersonalStreamCheck() {}

  /**
   * Every violation by the streams of a plan's people.
   *
   * @param people the people; null if there are none
   * @param set coefficients of the run
   */
  public static List<Fault> faults(PeopleDesign people, CoefficientSet set) {
    List<Fault> faults = new ArrayList<>();
    if (people != null && (people.count() == null || people.count() > 0)) {
      for (String stream : STREAMS) {
        check(stream, set.bind(PersonalStream.class, stream), faults);
      }
    }
    return faults;
  }

  private static void check(String stream, PersonalStream analysis, List<Fault> faults) {
    double cod = analysis.codKg();
    double organicNitrogen = analysis.nitrogenKg() * (1 - analysis.ammoniumShare());
    double least =
        Math.max(
            LEAST_COD_PER_VOLATILE * analysis.volatileSolidsKg(),
            LEAST_COD_PER_CARBON * analysis.carbonKg());
    if (cod < least || cod == 0 && organicNitrogen > 0) {
      faults.add(
          Fault.of(
              "feed.demand-below-organics",
              pointer(stream, "cod"),
              cod,
              least > 0 ? "at least " + Sentences.number(least) + " kg/d" : "more than 0 kg/d",
              "stream",
              stream,
              "leastPerSolids",
              LEAST_COD_PER_VOLATILE,
              "leastPerCarbon",
              LEAST_COD_PER_CARBON));
    } else if (analysis.carbonKg() < FeedCheck.LEAST_CARBON_PER_COD * cod) {
      faults.add(
          Fault.of(
              "feed.too-little-carbon",
              pointer(stream, "carbon"),
              analysis.carbonKg(),
              "at least " + Sentences.number(FeedCheck.LEAST_CARBON_PER_COD * cod) + " kg/d",
              "feed",
              stream,
              "least",
              FeedCheck.LEAST_CARBON_PER_COD));
    }
  }

  private static String pointer(String stream, String property) {
    return Pointer.child("/coefficients", "personal-streams." + stream + "." + property);
  }
}
