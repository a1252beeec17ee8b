package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.compost.CompostDesign;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.digester.TankDesign;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.Plan;

/** The same plan with something else in place of one of its parts. */
final class PlanInstead {

  static final String SCRAPS = "kitchen-scraps";
  private static final CompostDesign PILE = new CompostDesign(null, null, null);
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

  /** Every waste that a compost pile takes on the pile, and nothing fed. */
  static Plan composting(Plan plan) {
    CompostDesign pile = plan.compost() == null ? PILE : plan.compost();
    List<IngredientDesign> ingredients =
        new ArrayList<>(pile.ingredients() == null ? List.of() : pile.ingredients());
    for (FeedDesign feed : compostable(plan, ingredients.size())) {
      ingredients.add(
          new IngredientDesign(
              Compostable.as(feed.feed()).orElseThrow(),
              WasteElsewhere.freshKgPerYear(feed),
              false));
    }
    return changed(
        PlanWithout.feeds(plan), "compost", changed(pile, "ingredients", List.copyOf(ingredients)));
  }

  /** Feeds that {@link #composting} does not put on the pile, in the order of the plan. */
  static List<FeedDesign> notComposted(Plan plan) {
    int ingredients =
        plan.compost() == null || plan.compost().ingredients() == null
            ? 0
            : plan.compost().ingredients().size();
    List<FeedDesign> left = new ArrayList<>(plan.feeds());
    compostable(plan, ingredients).forEach(left::remove);
    return List.copyOf(left);
  }

  private static List<FeedDesign> compostable(Plan plan, int ingredients) {
    return plan.feeds().stream()
        .filter(feed -> Compostable.as(feed.feed()).isPresent())
        .limit(Math.max(0, MOST_INGREDIENTS - ingredients))
        .toList();
  }
}
