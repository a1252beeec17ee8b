package org.marshlight.ethanol;

import java.util.List;
import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/**
 * A year's mash: what goes in, and how much of it turns to sugar.
 *
 * @param draws what each bed gives
 * @param waterKg water added
 * @param maltKg malt bought
 * @param enzymeKg enzymes bought
 * @param yeastKg dry yeast bought
 * @param additives malt, enzymes and yeast as matter
 * @param releasedStarchKg starch taken apart, that of the malt included
 * @param releasedMaltStarchKg starch of the malt taken apart
 * @param releasedSugarKg free sugar that goes into the liquid
 */
record Mash(
    List<Draw> draws,
    double waterKg,
    double maltKg,
    double enzymeKg,
    double yeastKg,
    Matter additives,
    double releasedStarchKg,
    double releasedMaltStarchKg,
    double releasedSugarKg) {

  static Mash of(FuelDesign fuel, Harvest harvest, CoefficientSet set) {
    EthanolCoefficients c = set.bind(EthanolCoefficients.class);
    List<Draw> draws =
        harvest.lots().stream()
            .filter(lot -> lot.organs().freshKg() > 0 && fuel.mashedFraction() > 0)
            .map(lot -> Draw.of(lot, fuel.mashedFraction(), set))
            .toList();
    double starch = draws.stream().mapToDouble(Draw::starchKg).sum();
    double sugar = draws.stream().mapToDouble(Draw::sugarKg).sum();
    double released =
        draws.stream().mapToDouble(d -> d.starchKg() * d.mashing().release(fuel.route())).sum();
    if (released + sugar * c.sugarRelease() <= 0) {
      return new Mash(draws, 0, 0, 0, 0, Matter.NONE, 0, 0, 0);
    }
    double water = draws.stream().mapToDouble(Draw::addedWaterKg).sum();
    double malt = fuel.route() == MashRoute.MALT ? c.maltDose() * starch : 0;
    double enzyme = fuel.route() == MashRoute.ENZYME ? c.enzymeDose() * starch : 0;
    double yeast =
        c.yeastDose() * (water + draws.stream().mapToDouble(d -> d.organs().waterKg()).sum());
    Additive maltAsBought = set.bind(Additive.class, "malt");
    double maltStarch = maltAsBought.starchKg(malt) * c.maltRelease();
    Matter additives =
        maltAsBought
            .matter(malt)
            .plus(set.bind(Additive.class, "enzymes").matter(enzyme))
            .plus(set.bind(Additive.class, "yeast").matter(yeast));
    return new Mash(
        draws,
        water,
        malt,
        enzyme,
        yeast,
        additives,
        released + maltStarch,
        maltStarch,
        sugar * c.sugarRelease());
  }

  /** Storage organs of all beds. */
  Matter organs() {
    return Matter.sum(draws.stream().map(Draw::organs).toList());
  }

  /** Everything that goes in. */
  Matter whole() {
    return organs().plus(additives).plus(Matter.water(waterKg));
  }

  double starchKg() {
    return draws.stream().mapToDouble(Draw::starchKg).sum();
  }

  double sugarKg() {
    return draws.stream().mapToDouble(Draw::sugarKg).sum();
  }

  /** Sugar in the liquid, as glucose, kg. */
  double glucoseKg() {
    return Fermentation.glucoseKg(releasedStarchKg, 1) + releasedSugarKg;
  }
}
