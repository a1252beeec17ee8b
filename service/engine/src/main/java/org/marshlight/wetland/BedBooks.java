package org.marshlight.wetland;

import java.util.Map;
import org.marshlight.contract.Months;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;

/**
 * The books of one bed, from its year.
 *
 * <p>COD counts against ammonia, and nitrate and nitrogen gas carry none of it. So oxygen that
 * turns ammonium to nitrate is no entry here, and organic matter that nitrate burns on its way to
 * gas (2.86 kg COD for each kg of nitrogen) goes to {@link Party#OXYGEN} like what air burns: that
 * oxygen came from the air when the nitrate was made.
 */
final class BedBooks {

  private BedBooks() {}

  static Account of(
      BedYear<?> year, Map<String, Matter> received, String outflowTo, Destinations destinations) {
    StandGrowth growth = year.growth();
    Totals totals = Totals.of(year);
    Matter methane = Matter.methane(totals.methaneCodKg);
    Matter kept =
        totals
            .held
            .plus(BedYear.buriedLitter(year.bed(), growth))
            .plus(growth.standing())
            .plus(year.stored());
    Matter burnt = growth.respired();
    double reaction = reactionKg(year, methane, kept);
    double evaporatedKg =
        1000 * Months.sum(year.water().evaporated())
            - growth.organs().waterKg()
            - growth.tops().waterKg()
            + reaction;

    Account.Books books = Account.of(Party.bed(year.bed().index()));
    received.forEach(books::received);
    books
        .received(Party.RAIN, Matter.water(1000 * Months.sum(year.water().rain())))
        .received(Party.SUNLIGHT, growth.assimilated())
        .reactionWater(reaction)
        .gave(outflowTo, year.outflow().annual())
        .gave(
            Party.AIR,
            Matter.water(evaporatedKg)
                .plus(Matter.carbonDioxide(totals.carbonDioxideKg + burnt.organicCarbonKg()))
                .plus(nitrogenGas(totals.gasNitrogenKg))
                .plus(methane))
        .gave(Party.OXYGEN, Matter.oxidised(totals.oxidisedCodKg + burnt.codKg()));
    destinations
        .organs()
        .forEach(share -> books.gave(share.party(), growth.organs().times(share.fraction())));
    destinations
        .tops()
        .forEach(share -> books.gave(share.party(), growth.tops().times(share.fraction())));
    return books.kept(kept).close();
  }

  /** Water set free by all chemical change in a year; negative where growth binds more. */
  private static double reactionKg(BedYear<?> year, Matter methane, Matter kept) {
    StandGrowth growth = year.growth();
    double before =
        Stoichiometry.boundWaterKg(year.inflow().annual())
            + Stoichiometry.boundWaterKg(growth.assimilated());
    double after =
        Stoichiometry.boundWaterKg(year.outflow().annual())
            + Stoichiometry.boundWaterKg(growth.organs())
            + Stoichiometry.boundWaterKg(growth.tops())
            + Stoichiometry.boundWaterKg(methane)
            + Stoichiometry.boundWaterKg(kept);
    return before - after;
  }

  private static Matter nitrogenGas(double kg) {
    return new Matter(0, 0, 0, 0, 0, 0, 0, 0, kg, 0, 0);
  }

  /** What became of the water's matter over the year. */
  static final class Totals {

    double oxidisedCodKg;
    double methaneCodKg;
    double carbonDioxideKg;
    double nitrifiedKg;
    double gasNitrogenKg;
    double sorbedPhosphorusKg;
    Matter held = Matter.NONE;

    static Totals of(BedYear<?> year) {
      Totals totals = new Totals();
      for (BedMonth month : year.months()) {
        totals.oxidisedCodKg += month.oxidisedCodKg();
        totals.methaneCodKg += month.methaneCodKg();
        totals.carbonDioxideKg += month.carbonDioxideKg();
        totals.nitrifiedKg += month.nitrified();
        totals.gasNitrogenKg += month.gasNitrogenKg();
        totals.sorbedPhosphorusKg += month.sorbedPhosphorusKg();
        totals.held = totals.held.plus(month.held());
      }
      return totals;
    }
  }
}
