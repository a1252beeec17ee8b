package org.marshlight.digester;

/**
 * Liquor of an upper and a lower half. Warm over cold they hardly mix; cold over warm they turn
 * over. Inflow reaches both alike; the ground meets each by the wall and floor that it wets.
 */
final class LayeredLiquor extends Liquor {

  private final HeldHeat half;
  private final GroundExchange ground;
  private final Inflow inflow;
  private final double upperShare;
  private final double stableWK;
  private final double turningWK;

  private double halfWK;
  private int month;
  private double groundBaseW;
  private double groundFactor;
  private double exchangeWK;
  private double lowerSumWK;
  private double lowerDriveW;
  private double lowerC;

  /**
   * Layered liquor.
   *
   * @param held heat that all of the liquor holds
   * @param upperShare share of the wetted surface that the upper half wets
   * @param stableWK exchange of the halves when the upper one is warmer
   * @param turningWK exchange when it is cooler
   */
  LayeredLiquor(
      HeldHeat held,
      GroundExchange ground,
      Inflow inflow,
      double upperShare,
      double stableWK,
      double turningWK) {
    this.half = held.half();
    this.ground = ground;
    this.inflow = inflow;
    this.upperShare = upperShare;
    this.stableWK = stableWK;
    this.turningWK = turningWK;
  }

  @Override
  void stepOf(double hours) {
    halfWK = half.wattsPerK(hours);
  }

  @Override
  void prepare(int stepMonth, double baseW, double factor) {
    month = stepMonth;
    groundBaseW = baseW;
    groundFactor = factor;
    exchangeWK = surfaceC >= lowerC ? stableWK : turningWK;
    double heldAndFedWK = halfWK + exchangeWK + inflow.wattsPerK(month) / 2;
    double fedW = inflow.wattsPerK(month) / 2 * inflow.temperatureC(month);
    double groundWK = groundFactor * ground.internalWK();
    double groundW = groundFactor * groundBaseW;
    lowerSumWK = heldAndFedWK + (1 - upperShare) * groundWK;
    lowerDriveW = halfWK * lowerC - (1 - upperShare) * groundW + fedW;
    sumWK = heldAndFedWK + upperShare * groundWK - exchangeWK * exchangeWK / lowerSumWK;
    driveW =
        halfWK * surfaceC - upperShare * groundW + fedW + exchangeWK * lowerDriveW / lowerSumWK;
  }

  @Override
  void book(double newUpperC, HeatLedger ledger) {
    double newLowerC = lowerAfter(newUpperC);
    double wetted = upperShare * newUpperC + (1 - upperShare) * newLowerC;
    ledger.add(ledger.ground, month, -groundFactor * (groundBaseW + ground.internalWK() * wetted));
    ledger.add(
        ledger.inflow,
        month,
        inflow.wattsPerK(month) * (inflow.temperatureC(month) - (newUpperC + newLowerC) / 2));
    ledger.add(ledger.stored, month, halfWK * (newUpperC - surfaceC + newLowerC - lowerC));
  }

  @Override
  void settle(double newUpperC) {
    take(newUpperC, lowerAfter(newUpperC));
  }

  @Override
  void start(double startC) {
    take(startC, startC);
  }

  @Override
  void shift(double kelvin) {
    take(surfaceC + kelvin, lowerC + kelvin);
  }

  private double lowerAfter(double newUpperC) {
    return (lowerDriveW + exchangeWK * newUpperC) / lowerSumWK;
  }

  private void take(double upperC, double newLowerC) {
    surfaceC = upperC;
    lowerC = newLowerC;
    meanC = (upperC + newLowerC) / 2;
  }
}
