package org.marshlight.decision;

import java.util.Map;
import java.util.Optional;
import org.marshlight.economy.BaselineDesign.Fate;
import org.marshlight.evidence.Catalogues;

/** Which wastes of the catalogue of feeds a compost pile takes, and where the others go. */
final class Compostable {

  /**
   * Feeds that are called otherwise on a pile, with the ingredient that they are most like. Feeds
   * with the name of an ingredient need no entry.
   */
  private static final Map<String, String> LIKE =
      Map.of(
          "garden-grass", "grass-clippings",
          "wetland-tops", "grass-clippings",
          "garden-leaves", "autumn-leaves",
          "vegetable-trimmings", "kitchen-scraps",
          "fruit-waste", "kitchen-scraps",
          "pig-manure", "cattle-manure",
          "rabbit-manure", "goat-manure");

  /**
   * Liquids and fat that drown or clog a pile, with where they go by common practice: whey and
   * stillage are spread on land, used oil is hauled away.
   */
  private static final Map<String, Fate> NEVER =
      Map.of("whey", Fate.LAND, "stillage", Fate.LAND, "used-cooking-oil", Fate.REFUSE);

  private Compostable() {}

  /** The ingredient that a feed is on a pile; empty if a pile does not take it. */
  static Optional<String> as(String feed) {
    if (NEVER.containsKey(feed)) {
      return Optional.empty();
    }
    return Optional.ofNullable(
        Catalogues.standard().ids("ingredients").contains(feed) ? feed : LIKE.get(feed));
  }

  /** Where a feed goes that no pile takes; empty for those that a pile takes. */
  static Optional<Fate> otherwise(String feed) {
    return Optional.ofNullable(NEVER.get(feed));
  }
}
