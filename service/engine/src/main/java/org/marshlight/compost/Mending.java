package org.marshlight.compost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marshlight.evidence.CatalogueItem;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/**
 * What to add to a mix so that moisture and carbon to nitrogen both come into the ideal band: the
 * lightest answer with one ingredient or with two, solved from the two balances. Water that would
 * drain is counted, since the right addition holds it.
 */
final class Mending {

  /** Water from a tap or butt, the one addition that is in no catalogue. */
  static final String WATER = "water";

  private static final double ROUNDING = 1e-9;

  private final Matter whole;
  private final MixCoefficients c;
  private final double moisture;
  private final double ratio;

  private Mending(Matter whole, MixCoefficients c) {
    this.whole = whole;
    this.c = c;
    this.moisture = clamp(whole.waterKg() / whole.freshKg(), c.moistureLeast(), c.moistureMost());
    this.ratio = clamp(Mix.ratio(whole), c.ratioLeast(), c.ratioMost());
  }

  /** Whether a mix is outside the band that is bearable, which is wider than the ideal one. */
  static boolean needed(Matter whole, MixCoefficients c) {
    double wet = whole.waterKg() / whole.freshKg();
    double carbonToNitrogen = Mix.ratio(whole);
    return wet < c.moistureBearableLeast()
        || wet > c.moistureBearableMost()
        || carbonToNitrogen < c.ratioBearableLeast()
        || carbonToNitrogen > c.ratioBearableMost();
  }

  /** The lightest addition that brings a mix, its free water included, into the ideal band. */
  static Optional<List<Addition>> of(Matter whole, MixCoefficients c, CoefficientSet set) {
    return new Mending(whole, c).lightest(candidates(set));
  }

  private Optional<List<Addition>> lightest(List<Candidate> candidates) {
    List<Addition> best = null;
    for (int i = 0; i < candidates.size(); i++) {
      best = lighter(best, single(candidates.get(i)));
      for (int j = i + 1; j < candidates.size(); j++) {
        best = lighter(best, pair(candidates.get(i), candidates.get(j)));
      }
    }
    return Optional.ofNullable(best);
  }

  private List<Addition> lighter(List<Addition> best, List<Addition> other) {
    if (other == null || !inBand(with(other))) {
      return best;
    }
    return best == null || mass(other) < mass(best) * (1 - ROUNDING) ? other : best;
  }

  /** The larger of the two amounts that one ingredient needs to be for moisture and for ratio. */
  private List<Addition> single(Candidate candidate) {
    double mass = Math.max(forMoistureKg(candidate), forRatioKg(candidate));
    return mass > 0 && Double.isFinite(mass) ? List.of(new Addition(candidate, mass)) : null;
  }

  private double forMoistureKg(Candidate candidate) {
    double present = whole.waterKg() / whole.freshKg();
    return present == moisture
        ? 0
        : Mixing.additionForMoistureKg(
            whole.freshKg(), present, candidate.kilogram().waterKg(), moisture);
  }

  private double forRatioKg(Candidate candidate) {
    Matter added = candidate.kilogram();
    double dry = Math.max(added.totalSolidsKg(), ROUNDING);
    return Mix.ratio(whole) == ratio
        ? 0
        : Mixing.additionForRatioKg(
            whole.freshKg(),
            whole.waterKg() / whole.freshKg(),
            whole.organicCarbonKg() / whole.totalSolidsKg(),
            whole.nitrogenKg() / whole.totalSolidsKg(),
            added.waterKg(),
            added.organicCarbonKg() / dry,
            added.nitrogenKg() / dry,
            ratio);
  }

  /** The amounts of two ingredients that meet both balances at once. */
  private List<Addition> pair(Candidate first, Candidate second) {
    double wetness = moisture * whole.freshKg() - whole.waterKg();
    double richness = ratio * whole.nitrogenKg() - whole.organicCarbonKg();
    double a = first.wetness(moisture);
    double b = second.wetness(moisture);
    double d = first.richness(ratio);
    double e = second.richness(ratio);
    double determinant = a * e - b * d;
    double firstKg = (wetness * e - b * richness) / determinant;
    double secondKg = (a * richness - wetness * d) / determinant;
    return firstKg > 0 && secondKg > 0 && Double.isFinite(firstKg + secondKg)
        ? List.of(new Addition(first, firstKg), new Addition(second, secondKg))
        : null;
  }

  private Matter with(List<Addition> additions) {
    Matter sum = whole;
    for (Addition addition : additions) {
      sum = sum.plus(addition.candidate().kilogram().times(addition.massKg()));
    }
    return sum;
  }

  /** The mix as it would be with an addition. */
  static Matter mended(Matter whole, List<Addition> additions, MixCoefficients c) {
    return new Mending(whole, c).with(additions);
  }

  private boolean inBand(Matter matter) {
    double wet = matter.waterKg() / matter.freshKg();
    double carbonToNitrogen = Mix.ratio(matter);
    return wet >= c.moistureLeast() - ROUNDING
        && wet <= c.moistureMost() + ROUNDING
        && carbonToNitrogen >= c.ratioLeast() * (1 - ROUNDING)
        && carbonToNitrogen <= c.ratioMost() * (1 + ROUNDING);
  }

  private static double mass(List<Addition> additions) {
    return additions.stream().mapToDouble(Addition::massKg).sum();
  }

  private static double clamp(double value, double least, double most) {
    return Math.min(most, Math.max(least, value));
  }

  private static List<Candidate> candidates(CoefficientSet set) {
    List<Candidate> candidates = new ArrayList<>();
    candidates.add(new Candidate(WATER, Matter.water(1)));
    for (CatalogueItem item : Catalogues.standard().items("ingredients")) {
      if (item.kind().equals("carbon-rich") || item.kind().equals("nitrogen-rich")) {
        candidates.add(new Candidate(item.id(), set.bind(Ingredient.class, item.id()).matter(1)));
      }
    }
    return candidates;
  }

  /**
   * Something that may be added.
   *
   * @param name id of the ingredient, or water
   * @param kilogram a kilogram of it
   */
  record Candidate(String name, Matter kilogram) {

    /** Water that a kilogram brings beyond its share of a moisture. */
    double wetness(double moisture) {
      return kilogram.waterKg() - moisture;
    }

    /** Carbon that a kilogram brings beyond its nitrogen at a ratio. */
    double richness(double ratio) {
      return kilogram.organicCarbonKg() - ratio * kilogram.nitrogenKg();
    }
  }

  /**
   * So much of it.
   *
   * @param candidate what is added
   * @param massKg how much, as it comes
   */
  record Addition(Candidate candidate, double massKg) {}
}
