package org.marshlight.compost;

import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

/**
 * An amount of something that enters the heap in a year.
 *
 * @param from name of the process or party that gives it
 * @param name what it is, an id of the catalogue of ingredients
 * @param matter the amount
 * @param humanOrigin whether it comes from human waste or grew on it
 * @param dryBulkDensityKgM3 dry mass in a cubic metre of it
 * @param degradableShare share of its organic matter that decays in a long hot heap
 * @param waterHoldingKgKg water that each kilogram of its dry mass holds without dripping
 */
public record Material(
    String from,
    String name,
    Matter matter,
    boolean humanOrigin,
    double dryBulkDensityKgM3,
    double degradableShare,
    double waterHoldingKgKg) {

  /** Kind of those ingredients that come of human waste, or grow on it, in a loop like this one. */
  private static final String OF_A_LOOP = "loop";

  /**
   * A material of the loop: its amount as the loop says, its nature as that of an ingredient of the
   * catalogue, for instance {@code bed-tops}, {@code stillage}, {@code septic-sludge} or {@code
   * storage-organs}.
   *
   * @param from name of the process that gives it
   * @param ingredient id of the ingredient that it is like
   * @param matter the amount
   * @param humanOrigin whether it comes from human waste or grew on it
   * @param set the coefficients
   */
  public static Material ofLoop(
      String from, String ingredient, Matter matter, boolean humanOrigin, CoefficientSet set) {
    Ingredient like = set.bind(Ingredient.class, ingredient);
    return new Material(
        from,
        ingredient,
        matter,
        humanOrigin,
        like.dryBulkDensityKgM3(),
        like.degradableShare(),
        like.waterHoldingKgKg());
  }

  /** An ingredient brought from outside, a year's amount. */
  public static Material bought(IngredientDesign design, CoefficientSet set) {
    Ingredient ingredient = set.bind(Ingredient.class, design.ingredient());
    return ofLoop(
        Party.PURCHASES,
        design.ingredient(),
        ingredient.matter(design.freshKgPerYear()),
        humanOrigin(design),
        set);
  }

  /** What a loop gave elsewhere is of human origin unless the plan says that it is not. */
  private static boolean humanOrigin(IngredientDesign design) {
    if (design.humanOrigin() != null) {
      return design.humanOrigin();
    }
    return Catalogues.standard()
        .find("ingredients", design.ingredient())
        .map(item -> item.kind().equals(OF_A_LOOP))
        .orElse(true);
  }

  /** Room that it takes, m3. */
  double volumeM3() {
    return matter.totalSolidsKg() / dryBulkDensityKgM3;
  }

  /** Water that it can hold, kg. */
  double holdsKg() {
    return matter.totalSolidsKg() * waterHoldingKgKg;
  }
}
