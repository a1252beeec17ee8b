package org.marshlight.compost;

import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;

/**
 * What becomes of a mix. Mass, carbon, oxygen demand and heat are lost by one extent for each
 * material; water follows from the change of the organic matter and from the heat.
 *
 * @param allowed share of decay that moisture, air and nitrogen allow
 * @param decayed organic matter that turns to carbon dioxide and water
 * @param ammoniaKg nitrogen lost to the air as ammonia
 * @param leached nitrogen, phosphorus and potassium washed out while it decays
 * @param heatKWh heat set free
 * @param reactionKg water set free by the change of the organic matter
 * @param evaporatedKg water that evaporates
 * @param drippedKg water that drips out at the end
 * @param finished finished compost, its water included
 */
record Heap(
    double allowed,
    Matter decayed,
    double ammoniaKg,
    Matter leached,
    double heatKWh,
    double reactionKg,
    double evaporatedKg,
    double drippedKg,
    Matter finished) {

  private static final double MJ_PER_KWH = 3.6;

  /** Beyond this ratio of carbon to nitrogen all mixes are alike. */
  private static final double POOREST = 1e6;

  static Heap of(
      Mix mix, Method method, double freeAirLeast, DecayCoefficients c, HeatCoefficients h) {
    Matter moist = mix.moist();
    double allowed = allowed(mix, freeAirLeast, c);
    Matter decayed = decayed(mix, method.decayExtent() * allowed);
    double ammonia = ammoniaKg(mix, method, decayed, c);
    Matter leached = leached(moist, ammonia, c);
    Matter dry = dry(moist, decayed, ammonia, leached, c.mineralNitrogen() * allowed);
    double reaction = Stoichiometry.boundWaterKg(moist) - Stoichiometry.boundWaterKg(dry);
    double heat = HeapHeat.heatKWh(decayed.codKg(), h.heatOfOxygenMJKg());
    double available = moist.waterKg() + reaction;
    double evaporable = heat * MJ_PER_KWH * c.evaporatingShare() / h.evaporationMJKg();
    double wanted = dry.totalSolidsKg() * c.finishedMoisture() / (1 - c.finishedMoisture());
    double evaporated = Math.max(0, Math.min(available - wanted, evaporable));
    double held = dry.totalSolidsKg() * c.finishedWaterHoldingKgKg();
    double dripped = Math.max(0, available - evaporated - held);
    Matter finished = dry.plus(Matter.water(available - evaporated - dripped));
    return new Heap(
        allowed, decayed, ammonia, leached, heat, reaction, evaporated, dripped, finished);
  }

  private static double allowed(Mix mix, double freeAirLeast, DecayCoefficients c) {
    return Decay.moistureFactor(mix.moisture(), c.stopsAtMoisture(), c.freeFromMoisture())
        * Decay.airFactor(mix.freeAirSpace(), freeAirLeast, c.withoutAir())
        * Decay.nitrogenFactor(mix.carbonToNitrogen(), c.freeToRatio());
  }

  /** Organic matter that decays, its nitrogen set free. */
  private static Matter decayed(Mix mix, double extent) {
    Matter decayed = Matter.NONE;
    for (Material material : mix.materials()) {
      decayed =
          decayed.plus(material.matter().times(Math.min(1, extent * material.degradableShare())));
    }
    double left = mix.organicsLeft();
    return new Matter(
        0,
        decayed.volatileSolidsKg() * left,
        0,
        decayed.codKg() * left,
        decayed.organicCarbonKg() * left,
        0,
        decayed.organicNitrogenKg() * left,
        0,
        0,
        0,
        0);
  }

  /** Ammonia lost: no more than is there as ammonium or set free from what decays. */
  private static double ammoniaKg(Mix mix, Method method, Matter decayed, DecayCoefficients c) {
    Matter moist = mix.moist();
    double share =
        method.nitrogenLossFactor()
            * Decay.nitrogenLoss(
                Math.min(POOREST, mix.carbonToNitrogen()),
                c.richRatio(),
                c.richLoss(),
                c.poorRatio(),
                c.poorLoss());
    return Math.min(
        share * moist.nitrogenKg(), moist.ammoniumNitrogenKg() + decayed.organicNitrogenKg());
  }

  /** What rain and seepage wash out of what is not lost as ammonia. */
  private static Matter leached(Matter moist, double ammoniaKg, DecayCoefficients c) {
    double nitrogen = (moist.nitrogenKg() - ammoniaKg) * c.leachedNitrogen();
    double phosphorus = moist.phosphorusKg() * c.leachedPhosphorus();
    double potassium = moist.potassiumKg() * c.leachedPotassium();
    return new Matter(0, 0, 0, 0, 0, 0, 0, nitrogen, 0, phosphorus, potassium);
  }

  private static Matter dry(
      Matter moist, Matter decayed, double ammoniaKg, Matter leached, double mineralShare) {
    double nitrogen = moist.nitrogenKg() - ammoniaKg - leached.nitrogenKg();
    double nitrate = Math.min(moist.nitrateNitrogenKg(), nitrogen);
    double ammonium = (nitrogen - nitrate) * mineralShare;
    return new Matter(
        0,
        moist.volatileSolidsKg() - decayed.volatileSolidsKg(),
        moist.fixedSolidsKg(),
        moist.codKg() - decayed.codKg(),
        moist.organicCarbonKg() - decayed.organicCarbonKg(),
        0,
        nitrogen - nitrate - ammonium,
        ammonium,
        nitrate,
        moist.phosphorusKg() - leached.phosphorusKg(),
        moist.potassiumKg() - leached.potassiumKg());
  }
}
