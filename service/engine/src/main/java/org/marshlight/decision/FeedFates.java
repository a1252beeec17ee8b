package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Mark;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.Matter;

/**
 * What the wastes that a plan feeds would do otherwise: where they would go, what they would give
 * off there, and what would come back to land.
 */
final class FeedFates {

  /** Kind of those feeds that animals give. */
  private static final String ANIMAL = "animal";

  private final List<FeedDesign> feeds;
  private final Map<String, BaselineDesign.FeedWithout> stated = new TreeMap<>();
  private final CoefficientSet set;
  private final WarmingCoefficients c;

  FeedFates(List<FeedDesign> feeds, BaselineDesign baseline, CoefficientSet set) {
    this.feeds = feeds == null ? List.of() : feeds;
    this.set = set;
    this.c = set.bind(WarmingCoefficients.class);
    if (baseline.feeds() != null) {
      baseline.feeds().forEach(feed -> stated.put(feed.feed(), feed));
    }
  }

  /** Where a waste would go: as the plan says, else animals' to a store and others to a heap. */
  BaselineDesign.Fate of(String feed) {
    BaselineDesign.FeedWithout said = stated.get(feed);
    if (said != null) {
      return said.fate() == null ? BaselineDesign.Fate.HEAP : said.fate();
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
    for (String feed : feeds.stream().map(FeedDesign::feed).distinct().toList()) {
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
    for (String feed : feeds.stream().map(FeedDesign::feed).distinct().toList()) {
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
    for (FeedDesign feed : feeds) {
      Matter matter = annual(feed);
      double degradable = matter.codKg() * FeedAnalysis.of(feed, set).degradableShare();
      switch (of(feed.feed())) {
        case HEAP -> heapKg += matter.freshKg();
        case STORE -> {
          storedCod += degradable;
          storedNitrogen += matter.nitrogenKg();
        }
        case REFUSE -> refuseCod += degradable;
        case LAND -> {}
      }
      landNitrogen += toLand(feed, matter).nitrogenKg();
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
    for (FeedDesign feed : feeds) {
      sum = sum.plus(toLand(feed, annual(feed)));
    }
    return sum;
  }

  private Nutrients toLand(FeedDesign feed, Matter matter) {
    return switch (of(feed.feed())) {
      case REFUSE -> Nutrients.NONE;
      case LAND -> Nutrients.of(matter);
      case HEAP, STORE ->
          new Nutrients(
              matter.nitrogenKg() * (1 - c.fateNitrogenLost()),
              matter.phosphorusKg(),
              matter.potassiumKg());
    };
  }

  private Matter annual(FeedDesign feed) {
    double days = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      days += Months.includes(feed.months(), month) ? Months.days(month) : 0;
    }
    return FeedAnalysis.of(feed, set).matter(feed.freshKgPerDay() * days);
  }
}
