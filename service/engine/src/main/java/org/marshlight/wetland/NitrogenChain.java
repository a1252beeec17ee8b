package org.marshlight.wetland;

/**
 * Nitrogen in a bed in a month, followed from tank to tank: organic to ammonium to nitrate to gas.
 *
 * <p>What plants take up is taken where water enters and then counts against the losses that the
 * published rates foresee, for those rates were measured on beds with plants: uptake is part of
 * removal and adds to it only where it is the greater.
 *
 * @param organicKg organic nitrogen left in the water
 * @param ammoniumKg ammonium nitrogen left
 * @param nitrateKg nitrate nitrogen left
 * @param nitrifiedKg ammonium turned to nitrate on the way
 * @param gasKg nitrate turned to nitrogen gas
 * @param buriedKg organic nitrogen that settles for good
 */
record NitrogenChain(
    double organicKg,
    double ammoniumKg,
    double nitrateKg,
    double nitrifiedKg,
    double gasKg,
    double buriedKg) {

  /**
   * What a bed does to nitrogen in a month.
   *
   * @param tanks number of tanks in the row
   * @param loadingMYear water that passes
   * @param organicRate rate of ammonification, m/a
   * @param ammoniumRate rate of nitrification and uptake together, m/a
   * @param nitrateRate rate of denitrification, m/a
   * @param organicBackgroundKg organic nitrogen that stays in the water whatever the rate
   * @param buriedShare share of the organic nitrogen lost from the water that settles for good
   * @param coupledShare share of new nitrate that is reduced where it forms
   * @param nitrifiableKg ammonium nitrogen for which there is oxygen
   * @param reducibleKg nitrate nitrogen for which there is organic matter
   */
  record Setting(
      int tanks,
      double loadingMYear,
      double organicRate,
      double ammoniumRate,
      double nitrateRate,
      double organicBackgroundKg,
      double buriedShare,
      double coupledShare,
      double nitrifiableKg,
      double reducibleKg) {

    /** Share of a substance that one tank takes. */
    private double taken(double rateMYear) {
      return rateMYear <= 0 ? 0 : rateMYear / (rateMYear + tanks * loadingMYear);
    }
  }

  static NitrogenChain of(
      double organicLoadKg,
      double ammoniumLoadKg,
      double nitrateLoadKg,
      double uptakeKg,
      Setting setting) {
    double ofAmmonium = Math.min(uptakeKg, ammoniumLoadKg);
    double ofNitrate = Math.min(uptakeKg - ofAmmonium, nitrateLoadKg);
    double ofOrganic = Math.min(uptakeKg - ofAmmonium - ofNitrate, organicLoadKg);
    double organic = organicLoadKg - ofOrganic;
    double ammonium = ammoniumLoadKg - ofAmmonium;
    double nitrate = nitrateLoadKg - ofNitrate;
    double background = Math.min(organicLoadKg, setting.organicBackgroundKg());
    double reducible = setting.reducibleKg();
    double nitrifiable = setting.nitrifiableKg() / setting.tanks();
    double organicTaken = setting.taken(setting.organicRate());
    double ammoniumTaken = setting.taken(setting.ammoniumRate());
    double nitrateTaken = setting.taken(setting.nitrateRate());
    double nitrified = 0;
    double gas = 0;
    double buried = 0;
    for (int tank = 0; tank < setting.tanks(); tank++) {
      double loss = Math.max(0, organic + ofOrganic - background) * organicTaken;
      double settled = Math.min(organic, Math.max(0, loss - ofOrganic));
      ofOrganic = Math.max(0, ofOrganic - loss);
      organic -= settled;
      buried += setting.buriedShare() * settled;
      ammonium += (1 - setting.buriedShare()) * settled;

      loss = (ammonium + ofAmmonium) * ammoniumTaken;
      double turned = Math.min(nitrifiable, Math.max(0, loss - ofAmmonium));
      ofAmmonium = Math.max(0, ofAmmonium - loss);
      ammonium -= turned;
      nitrified += turned;
      double onTheSpot = Math.min(reducible, setting.coupledShare() * turned);
      nitrate += turned - onTheSpot;
      reducible -= onTheSpot;
      gas += onTheSpot;

      loss = (nitrate + ofNitrate) * nitrateTaken;
      double reduced = Math.min(reducible, Math.max(0, loss - ofNitrate));
      ofNitrate = Math.max(0, ofNitrate - loss);
      nitrate -= reduced;
      reducible -= reduced;
      gas += reduced;
    }
    return new NitrogenChain(organic, ammonium, nitrate, nitrified, gas, buried);
  }
}
