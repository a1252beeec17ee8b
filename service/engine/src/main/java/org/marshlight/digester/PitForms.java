package org.marshlight.digester;

/**
 * Coupling of a small pit to the ground.
 *
 * @param steadyWK loss for each kelvin between the year's means of liquor and ground surface
 * @param internalWK loss for each kelvin that the liquor is above its own mean
 * @param externalWK swing of the loss for each kelvin of the ground surface's swing
 * @param externalLagDays days by which the greatest loss lags the coldest surface
 */
record PitForms(double steadyWK, double internalWK, double externalWK, double externalLagDays) {

  /**
   * The forms for a pit.
   *
   * @param liquidTopM from ground surface to the liquid's surface
   * @param resistance of walls and floor, m2.K/W
   * @param heatCapacity of the soil, J/(m3.K)
   */
  static PitForms of(
      double floorAreaM2,
      double perimeterM,
      double liquidDepthM,
      double liquidTopM,
      double resistance,
      double conductivity,
      double heatCapacity) {
    double wetted = floorAreaM2 + perimeterM * liquidDepthM;
    double surface = wetted + floorAreaM2;
    double middle = liquidTopM + liquidDepthM / 2;
    double shape = PitCoupling.shapeFactorM(wetted, surface, middle);
    double steady = PitCoupling.steadyLossWK(resistance, wetted, conductivity, shape);
    double soilShare = steady / (conductivity * shape);
    double penetration = GroundCoupling.penetrationDepthM(conductivity, heatCapacity);
    return new PitForms(
        steady,
        PitCoupling.internalLossWK(steady, soilShare, surface, penetration),
        PitCoupling.externalSwingWK(steady, soilShare, middle, penetration),
        PitCoupling.externalLagDays(soilShare, middle, penetration));
  }
}
