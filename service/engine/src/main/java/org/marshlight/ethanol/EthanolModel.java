package org.marshlight.ethanol;

import java.util.List;
import java.util.OptionalDouble;
import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;

/** Fuel alcohol from the starch of the beds: mash, fermentation, still, and the heat of each. */
public final class EthanolModel {

  private EthanolModel() {}

  /**
   * A year of making fuel alcohol.
   *
   * @param fuel how it is made, with all its defaults filled
   * @param still the still, with all its defaults filled
   * @param harvest what is lifted from the beds; only the mashed share of the organs is received
   * @param set the coefficients
   * @param humanOrigin whether the beds are fed with human waste
   * @param stillageTo name of the process or party that receives the stillage
   * @param pressureKPa pressure of the air at the site, 50 to 110
   */
  public static EthanolOutcome run(
      FuelDesign fuel,
      StillDesign still,
      Harvest harvest,
      CoefficientSet set,
      boolean humanOrigin,
      String stillageTo,
      double pressureKPa) {
    EthanolRun run = EthanolRun.of(fuel, still, harvest, set, pressureKPa);
    OptionalDouble breakEven = run.breakEven();
    EthanolEstimate estimate = EthanolFigures.of(run, breakEven);
    return new EthanolOutcome(
        estimate,
        run.stillage(),
        account(run, stillageTo),
        EthanolNotices.of(run, estimate, humanOrigin),
        humanOrigin);
  }

  /**
   * The steps at the design point, each of which can be worked again from the formula book.
   *
   * @param fuel how it is made, with all its defaults filled
   * @param still the still, with all its defaults filled
   * @param harvest what is lifted from the beds
   * @param set the coefficients
   * @param pressureKPa pressure of the air at the site, 50 to 110
   */
  public static List<Step> working(
      FuelDesign fuel, StillDesign still, Harvest harvest, CoefficientSet set, double pressureKPa) {
    return EthanolWorking.of(EthanolRun.of(fuel, still, harvest, set, pressureKPa));
  }

  private static Account account(EthanolRun run, String stillageTo) {
    Mash mash = run.mash();
    Beer beer = run.beer();
    Distilling distilling = run.distilling();
    Account.Books books = Account.of(Party.STILL);
    mash.draws().forEach(draw -> books.received(draw.from(), draw.organs()));
    Matter fermented = beer.rest().plus(Fermentation.ethanol(beer.ethanolKg()));
    double bound = Stoichiometry.boundWaterKg(fermented) - Stoichiometry.boundWaterKg(mash.whole());
    return books
        .received(Party.WATER_SUPPLY, Matter.water(mash.waterKg()))
        .received(Party.PURCHASES, mash.additives())
        .reactionWater(-bound)
        .gave(
            Party.FUEL_TANK,
            Fermentation.ethanol(distilling.ethanolKg()).plus(Matter.water(distilling.waterKg())))
        .gave(
            Party.AIR,
            Matter.carbonDioxide(
                    beer.carbonDioxideKg() * Stoichiometry.CARBON / Stoichiometry.CARBON_DIOXIDE)
                .plus(Fermentation.ethanol(distilling.lostEthanolKg()))
                .plus(Matter.water(distilling.lostWaterKg())))
        .gave(stillageTo, run.stillage())
        .close();
  }
}
