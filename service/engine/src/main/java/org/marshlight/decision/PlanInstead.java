package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marshlight.compost.CompostDesign;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.contract.Months;
import org.marshlight.digester.TankDesign;
import org.marshlight.evidence.Catalogues;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.Plan;

/** The same plan with something else in place of one of its parts. */
final class PlanInstead {

  static final String SCRAPS = "kitchen-scraps";
  private static final CompostDesign HEAP = new CompostDesign(null, null, null);
  private static final int MOST_INGREDIENTS = 20;
  private static final int MOST_FEEDS = 20;

  private PlanInstead() {}

  /** The tank under earth with better insulated lid and walls. */
  static Plan insulation(Plan plan, TankDesign filled, double resistanceM2KW) {
    TankDesign better =
        changed(
            changed(plan.tank(), "lidResistanceM2KW", filled.lidResistanceM2KW() + resistanceM2KW),
            "wallResistanceM2KW",
            filled.wallResistanceM2KW() + resistanceM2KW);
    return changed(PlanWithout.glass(plan), "tank", better);
  }

  /**
   * The tank under earth with more fed: what it gets already, or kitchen scraps where it gets
   * nothing.
   */
  static Plan feeding(Plan plan, double more, double scrapsKgPerDay) {
    List<FeedDesign> feeds = new ArrayList<>();
    for (FeedDesign feed : plan.feeds() == null ? List.<FeedDesign>of() : plan.feeds()) {
      feeds.add(changed(feed, "freshKgPerDay", feed.freshKgPerDay() * (1 + more)));
    }
    if (feeds.stream().noneMatch(feed -> feed.freshKgPerDay() > 0) && feeds.size() < MOST_FEEDS) {
      feeds.add(FeedDesign.of(SCRAPS, scrapsKgPerDay));
    }
    return changed(PlanWithout.glass(plan), "feeds", List.copyOf(feeds));
  }

  /** Every waste that a heap can take on the heap, and nothing fed. */
  static Plan composting(Plan plan) {
    CompostDesign heap = plan.compost() == null ? HEAP : plan.compost();
    List<IngredientDesign> ingredients =
        new ArrayList<>(heap.ingredients() == null ? List.of() : heap.ingredients());
    for (FeedDesign feed : plan.feeds()) {
      Optional<String> like = like(feed.feed());
      if (like.isPresent() && ingredients.size() < MOST_INGREDIENTS) {
        ingredients.add(new IngredientDesign(like.get(), freshKgPerYear(feed), false));
      }
    }
    return changed(
        PlanWithout.feeds(plan), "compost", changed(heap, "ingredients", List.copyOf(ingredients)));
  }

  private static double freshKgPerYear(FeedDesign feed) {
    double days = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      days += Months.includes(feed.months(), month) ? Months.days(month) : 0;
    }
    return feed.freshKgPerDay() * days;
  }

  /**
   * The ingredient of a heap that a feed of the tank is most like; empty if it does not compost.
   */
  private static Optional<String> like(String feed) {
    if (Catalogues.standard().ids("ingredients").contains(feed) && !feed.equals("stillage")) {
      return Optional.of(feed);
    }
    return switch (feed) {
      case "garden-grass", "wetland-tops" -> Optional.of("grass-clippings");
      case "garden-leaves" -> Optional.of("autumn-leaves");
      case "vegetable-trimmings", "fruit-waste" -> Optional.of(SCRAPS);
      case "pig-manure" -> Optional.of("cattle-manure");
      case "rabbit-manure" -> Optional.of("goat-manure");
      default -> Optional.empty();
    };
  }
}
