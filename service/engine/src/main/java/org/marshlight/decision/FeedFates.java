package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Mark;
import org.marshlight.feed.Matter;

/**
 * What the wastes of a plan would do otherwise: where they would go, what they would give off
 * there, and what would come back to land.
 */
final class FeedFates {

  /** Kind of those feeds that animals give. */
  private static final String ANIMAL = "animal";

  private final List<WasteElsewhere> wastes;
  private final Map<String, BaselineDesign.FeedWithout> stated = new TreeMap<>();
  private final WarmingCoefficients c;

  FeedFates(List<WasteElsewhere> wastes, BaselineDesign baseline, CoefficientSet set) {
    this.wastes = wastes;
    this.c = set.bind(WarmingCoefficients.class);
    if (baseline.feeds() != null) {
      baseline.feeds().forEach(feed -> stated.put(feed.feed(), feed));
    }
  }

  /**
   * Where a waste would go: as the plan says, else animals' to a store, others to a heap, and those
   * that no heap takes to land or refuse.
   */
  BaselineDesign.Fate of(String feed) {
    BaselineDesign.FeedWithout said = stated.get(feed);
    if (said != null) {
      return said.fate() == null ? BaselineDesign.Fate.HEAP : said.fate();
    }
    Optional<BaselineDesign.Fate> uncompostable = Compostable.otherwise(feed);
    if (uncompostable.isPresent()) {
      return uncompostable.get();
    }
    boolean animal =
        Catalogues.standard()
            .find("feeds", feed)
            .map(item -> item.kind().equals(ANIMAL))
            .orElse(false);
    return animal ? BaselineDesign.Fate.STORE : BaselineDesign.Fate.HEAP;
  }

  /** What is taken for wastes of which the plan does not say. */
  List<Assumption> assumptions() {
    List<Assumption> assumptions = new ArrayList<>();
    for (String feed : wastes.stream().map(WasteElsewhere::waste).distinct().toList()) {
      if (!stated.containsKey(feed)) {
        String fate = WireName.of(of(feed));
        assumptions.add(
            new Assumption(
                "default",
                fate,
                "/baseline/feeds",
                Sentences.text("decision.fate-taken", Params.of("feed", feed, "fate", fate)),
                null,
                null,
                "house-choice",
                Mark.COMMON_PRACTICE.words()));
      }
    }
    return assumptions;
  }

  /** What they would cost a year. */
  double yearlyCost() {
    double cost = 0;
    for (String feed : wastes.stream().map(WasteElsewhere::waste).distinct().toList()) {
      BaselineDesign.FeedWithout said = stated.get(feed);
      cost += said == null || said.yearlyCost() == null ? 0 : said.yearlyCost();
    }
    return cost;
  }

  /** What they would give off, one line for each way that any of them goes. */
  List<Gases> gases() {
    double heapKg = 0;
    double storedCod = 0;
    double storedNitrogen = 0;
    double refuseCod = 0;
    double landNitrogen = 0;
    for (WasteElsewhere waste : wastes) {
      Matter matter = waste.annual();
      double degradable = matter.codKg() * waste.degradableShare();
      switch (of(waste.waste())) {
        case HEAP -> heapKg += matter.freshKg();
        case STORE -> {
          storedCod += degradable;
          storedNitrogen += matter.nitrogenKg();
        }
        case REFUSE -> refuseCod += degradable;
        case LAND -> {}
      }
      landNitrogen += toLand(waste).nitrogenKg();
    }
    List<Gases> lines = new ArrayList<>();
    lines.add(
        new Gases(
            "decision.gases-heap-without",
            0,
            heapKg * c.heapMethane(),
            heapKg * c.heapNitrousOxide()));
    lines.add(
        new Gases(
            "decision.gases-store-without",
            0,
            Warming.methaneOfStoreKg(storedCod, c.storeMethane()),
            Warming.nitrousOxideKg(storedNitrogen, c.storeNitrousOxide())));
    lines.add(
        Gases.methane(
            "decision.gases-refuse-without",
            Warming.methaneOfStoreKg(refuseCod, c.refuseMethane())));
    lines.add(
        Gases.nitrousOxide(
            "decision.gases-land-without",
            Warming.nitrousOxideKg(landNitrogen, c.landNitrousOxide())));
    lines.removeIf(Gases::none);
    return List.copyOf(lines);
  }

  /** Nutrients that would come back to land. */
  Nutrients toLand() {
    Nutrients sum = Nutrients.NONE;
    for (WasteElsewhere waste : wastes) {
      sum = sum.plus(toLand(waste));
    }
    return sum;
  }

  private Nutrients toLand(WasteElsewhere waste) {
    Matter matter = waste.annual();
    return switch (of(waste.waste())) {
      case REFUSE -> Nutrients.NONE;
      case LAND -> Nutrients.of(matter);
      case HEAP, STORE ->
          new Nutrients(
              matter.nitrogenKg() * (1 - c.fateNitrogenLost()),
              matter.phosphorusKg(),
              matter.potassiumKg());
    };
  }
}
