package org.marshlight.wetland;

import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;

/**
 * What becomes in a month of what is in a bed's water.
 *
 * @param left what stays in the water, for the outflow or the next month
 * @param coliforms what is left of the coliforms, density times m3
 * @param oxidisedCodKg COD burned with oxygen, be it of the air or of nitrate
 * @param methaneCodKg COD that leaves as methane
 * @param carbonDioxideKg carbon in the carbon dioxide given off
 * @param nitrified ammonium nitrogen turned to nitrate
 * @param gasNitrogenKg nitrogen gas given off
 * @param sorbedPhosphorusKg phosphorus bound by the medium
 * @param held organic matter and nutrients that settle for good, sorbed phosphorus included
 */
record BedMonth(
    Carried left,
    double coliforms,
    double oxidisedCodKg,
    double methaneCodKg,
    double carbonDioxideKg,
    double nitrified,
    double gasNitrogenKg,
    double sorbedPhosphorusKg,
    Matter held) {

  /**
   * What acts on the water in a month.
   *
   * @param load what the water carries: inflow and what was left over
   * @param coliformLoad coliforms that come, density times m3
   * @param coliformFloor least that the cap leaves of them
   * @param litter litter whose organic matter decays in the month
   * @param uptake nitrogen, phosphorus and potassium that plants take from the water
   * @param volumeM3 volume in which the load stands
   * @param loadingMYear water that passes
   * @param warmth temperatures along the bed
   * @param days length of the month
   * @param methaneCodKg methane of the stand, where there is matter for it
   * @param phosphorusRate areal rate of phosphorus removal at this age, m/a
   */
  record Setting(
      Carried load,
      double coliformLoad,
      double coliformFloor,
      Matter litter,
      Matter uptake,
      double volumeM3,
      double loadingMYear,
      WarmthAlongBed warmth,
      int days,
      double methaneCodKg,
      double phosphorusRate) {}

  private static final double G_M3_PER_KG_M3 = 1000;

  static BedMonth of(BedSite bed, Setting s) {
    Matter load = s.load().matter();
    double bod5 = bod5LeftKg(bed, s);
    double solids = solidsLeftKg(bed, s);
    OrganicFates organic = OrganicFates.of(bed, s.load(), bod5, solids);
    double decayedCod = organic.decayedCodKg() + s.litter().codKg();
    double decayedCarbon = organic.decayedCarbonKg() + s.litter().organicCarbonKg();
    NitrogenChain nitrogen = nitrogen(bed, s, decayedCod);
    double methane = methaneCodKg(bed, s, decayedCod, decayedCarbon, nitrogen);
    double phosphorus =
        phosphorusLeftKg(
            bed,
            load.phosphorusKg(),
            s.uptake().phosphorusKg(),
            s.volumeM3(),
            s.loadingMYear(),
            s.phosphorusRate());
    double sorbed = load.phosphorusKg() - s.uptake().phosphorusKg() - phosphorus;
    return new BedMonth(
        new Carried(left(s, organic, nitrogen, phosphorus), bod5, solids),
        coliformsLeft(bed, s),
        decayedCod - methane,
        methane,
        decayedCarbon - methane * Stoichiometry.METHANE_CARBON / Stoichiometry.METHANE_COD,
        nitrogen.nitrifiedKg(),
        nitrogen.gasKg(),
        sorbed,
        held(load, organic, nitrogen, sorbed));
  }

  /** What stays in the water. */
  private static Matter left(
      Setting s, OrganicFates organic, NitrogenChain nitrogen, double phosphorusKg) {
    Matter load = s.load().matter();
    return new Matter(
        0,
        load.volatileSolidsKg() * organic.leftShare(),
        load.fixedSolidsKg(),
        load.codKg() * organic.leftShare(),
        load.organicCarbonKg() * organic.leftShare(),
        load.inorganicCarbonKg(),
        nitrogen.organicKg(),
        nitrogen.ammoniumKg(),
        nitrogen.nitrateKg(),
        phosphorusKg,
        load.potassiumKg() - s.uptake().potassiumKg());
  }

  /** What settles or is bound for good. */
  private static Matter held(
      Matter load, OrganicFates organic, NitrogenChain nitrogen, double sorbedKg) {
    return new Matter(
        0,
        load.volatileSolidsKg() * organic.heldShare(),
        0,
        load.codKg() * organic.heldShare(),
        load.organicCarbonKg() * organic.heldShare(),
        0,
        nitrogen.buriedKg(),
        0,
        0,
        sorbedKg,
        0);
  }

  /** Concentration, mg/L, of a mass in a volume. */
  private static double mgL(double kg, double volumeM3) {
    return volumeM3 > 0 ? kg / volumeM3 * G_M3_PER_KG_M3 : 0;
  }

  private static double kg(double mgL, double volumeM3) {
    return mgL * volumeM3 / G_M3_PER_KG_M3;
  }

  private static double bod5LeftKg(BedSite bed, Setting s) {
    BedKindRates r = bed.rates();
    double inflow = mgL(s.load().bod5Kg(), s.volumeM3());
    double rate =
        s.warmth()
            .meanRate(
                TanksInSeries.rateAtStrengthMYear(
                    r.bod5Rate(), inflow, bed.c().referenceBod5(), r.bod5StrengthExponent()),
                r.bod5Theta());
    double background = r.bod5BackgroundShare() * inflow;
    double left =
        TanksInSeries.outflowMgL(inflow, background, rate, r.bod5Tanks(), s.loadingMYear());
    // a background is a share of the inflow, so only rounding could leave more than came
    return Math.min(s.load().bod5Kg(), kg(left, s.volumeM3()));
  }

  private static double solidsLeftKg(BedSite bed, Setting s) {
    BedKindRates r = bed.rates();
    double inflow = mgL(s.load().solidsKg(), s.volumeM3());
    double background =
        TanksInSeries.backgroundMgL(
            inflow, r.solidsBackground(), r.solidsBackgroundShare(), r.solidsBackgroundMost());
    return kg(
        TanksInSeries.outflowMgL(
            inflow, background, r.solidsRate(), r.solidsTanks(), s.loadingMYear()),
        s.volumeM3());
  }

  private static NitrogenChain nitrogen(BedSite bed, Setting s, double decayedCodKg) {
    BedKindRates r = bed.rates();
    Matter load = s.load().matter();
    return NitrogenChain.of(
        load.organicNitrogenKg(),
        load.ammoniumNitrogenKg(),
        load.nitrateNitrogenKg(),
        s.uptake().organicNitrogenKg(),
        new NitrogenChain.Setting(
            (int) Math.max(1, Math.rint(r.nitrogenTanks())),
            s.loadingMYear(),
            nitrogenRate(bed, s, r.organicNitrogenRate(), r.organicNitrogenTheta()),
            nitrogenRate(bed, s, r.ammoniumRate(), r.ammoniumTheta()),
            nitrogenRate(bed, s, r.nitrateRate(), r.nitrateTheta()),
            kg(r.organicNitrogenBackground(), s.volumeM3()),
            bed.c().buriedNitrogen(),
            r.coupledDenitrification(),
            NitrogenLimits.nitrificationKg(r.oxygenSupply(), bed.areaM2(), s.days()),
            NitrogenLimits.denitrificationKg(decayedCodKg, bed.c().denitrifyingCod())));
  }

  private static double nitrogenRate(BedSite bed, Setting s, double rateAt20, double theta) {
    BedKindRates r = bed.rates();
    return s.warmth()
        .mean(
            t ->
                TanksInSeries.coldFactor(t, r.coldFrom(), bed.c().coldTo(), r.coldFloor())
                    * TanksInSeries.rateAtTemperature(rateAt20, theta, t));
  }

  /** The stand's methane, held to a share of what decays and to half of the carbon in it. */
  private static double methaneCodKg(
      BedSite bed, Setting s, double decayedCod, double decayedCarbon, NitrogenChain nitrogen) {
    double byNitrate = nitrogen.gasKg() * Stoichiometry.DENITRIFICATION_COD;
    double free = Math.max(0, decayedCod - byNitrate) * bed.c().methaneMost();
    double ofCarbon = decayedCarbon / 2 * Stoichiometry.METHANE_COD / Stoichiometry.METHANE_CARBON;
    return Math.min(s.methaneCodKg(), Math.min(free, ofCarbon));
  }

  /** Phosphorus left in the water: what the rate leaves, or less where plants take more. */
  static double phosphorusLeftKg(
      BedSite bed,
      double loadKg,
      double uptakeKg,
      double volumeM3,
      double loadingMYear,
      double rateMYear) {
    double inflow = mgL(loadKg, volumeM3);
    double background = Math.min(inflow, bed.rates().phosphorusBackground());
    double left =
        kg(
            TanksInSeries.outflowMgL(
                inflow, background, rateMYear, bed.rates().phosphorusTanks(), loadingMYear),
            volumeM3);
    return Math.max(0, Math.min(left, loadKg - uptakeKg));
  }

  private static double coliformsLeft(BedSite bed, Setting s) {
    BedKindRates r = bed.rates();
    double inflow = s.volumeM3() > 0 ? s.coliformLoad() / s.volumeM3() : 0;
    double rate = s.warmth().meanRate(r.coliformRate(), r.coliformTheta());
    double left =
        s.volumeM3()
            * TanksInSeries.outflowMgL(
                inflow,
                Math.min(inflow, r.coliformBackground()),
                rate,
                r.coliformTanks(),
                s.loadingMYear());
    return Math.min(s.coliformLoad(), Math.max(left, s.coliformFloor()));
  }
}
