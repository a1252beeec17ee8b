package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.marshlight.compost.CompostDesign;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.compost.Material;
import org.marshlight.contract.Months;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.Matter;
import org.marshlight.loop.Plan;

/**
 * A waste that goes another way than into the tank or onto the compost pile.
 *
 * @param waste id in the catalogue of feeds
 * @param annual a year's amount
 * @param degradableShare fraction of its COD that microbes can break down
 */
record WasteElsewhere(String waste, Matter annual, double degradableShare) {

  /** Everything that a plan feeds to its tank, as if the tank did not take it. */
  static List<WasteElsewhere> fed(Plan plan, CoefficientSet set) {
    return ofFeeds(plan.feeds(), set);
  }

  /**
   * What a plan composts, as if there were no pile: only the ingredients for which the baseline
   * says what else they would do; all others are taken to be got for the pile.
   */
  static List<WasteElsewhere> composted(Plan plan, BaselineDesign baseline, CoefficientSet set) {
    return ofIngredients(ingredients(plan), baseline, set);
  }

  /**
   * What a changed plan takes up less of than the whole plan does.
   *
   * @param whole the plan that is judged
   * @param changed what differs from it
   */
  static List<WasteElsewhere> between(
      Plan whole, Plan changed, BaselineDesign baseline, CoefficientSet set) {
    List<WasteElsewhere> wastes =
        new ArrayList<>(ofFeeds(less(whole.feeds(), changed.feeds()), set));
    List<IngredientDesign> left = new ArrayList<>(ingredients(whole));
    ingredients(changed).forEach(left::remove);
    wastes.addAll(ofIngredients(left, baseline, set));
    return List.copyOf(wastes);
  }

  /** These feeds, as if the tank did not take them. */
  static List<WasteElsewhere> ofFeeds(List<FeedDesign> feeds, CoefficientSet set) {
    List<WasteElsewhere> wastes = new ArrayList<>();
    for (FeedDesign feed : feeds == null ? List.<FeedDesign>of() : feeds) {
      FeedAnalysis analysis = FeedAnalysis.of(feed, set);
      wastes.add(
          new WasteElsewhere(
              feed.feed(), analysis.matter(freshKgPerYear(feed)), analysis.degradableShare()));
    }
    return List.copyOf(wastes);
  }

  private static List<WasteElsewhere> ofIngredients(
      List<IngredientDesign> ingredients, BaselineDesign baseline, CoefficientSet set) {
    Set<String> stated =
        baseline.feeds() == null
            ? Set.of()
            : baseline.feeds().stream()
                .map(BaselineDesign.FeedWithout::feed)
                .collect(Collectors.toSet());
    return ingredients.stream()
        .filter(ingredient -> stated.contains(ingredient.ingredient()))
        .map(ingredient -> Material.bought(ingredient, set))
        .map(it -> new WasteElsewhere(it.name(), it.matter(), it.degradableShare()))
        .toList();
  }

  /** Amounts of feeds that are in the first list and not in the second. */
  private static List<FeedDesign> less(List<FeedDesign> feeds, List<FeedDesign> taken) {
    Map<FeedDesign, Double> still = new HashMap<>();
    for (FeedDesign feed : taken == null ? List.<FeedDesign>of() : taken) {
      still.merge(amount(feed, 0), feed.freshKgPerDay(), Double::sum);
    }
    List<FeedDesign> left = new ArrayList<>();
    for (FeedDesign feed : feeds == null ? List.<FeedDesign>of() : feeds) {
      FeedDesign kind = amount(feed, 0);
      double available = still.getOrDefault(kind, 0.0);
      double used = Math.min(available, feed.freshKgPerDay());
      still.put(kind, available - used);
      if (feed.freshKgPerDay() > used) {
        left.add(amount(feed, feed.freshKgPerDay() - used));
      }
    }
    return left;
  }

  private static FeedDesign amount(FeedDesign feed, double freshKgPerDay) {
    return changed(feed, "freshKgPerDay", freshKgPerDay);
  }

  private static List<IngredientDesign> ingredients(Plan plan) {
    CompostDesign compost = plan.compost();
    return compost == null || compost.ingredients() == null ? List.of() : compost.ingredients();
  }

  /** Fresh mass of a feed in a year. */
  static double freshKgPerYear(FeedDesign feed) {
    double days = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      days += Months.includes(feed.months(), month) ? Months.days(month) : 0;
    }
    return feed.freshKgPerDay() * days;
  }
}
