package org.marshlight.digester;

/**
 * Liquor of an upper and a lower half. Warm over cold they hardly mix; cold over warm they turn
 * over. Inflow reaches both alike; the ground meets each by the wall and floor that it wets.
 */
final class LayeredLiquor implements Liquor {

  private final HeldHeat half;
  private final GroundExchange ground;
  private final Inflow inflow;
  private final double upperShare;
  private final double stableWK;
  private final double turningWK;

  private int month;
  private double groundBaseW;
  private double groundFactor;
  private double exchangeWK;
  private double lowerSumWK;
  private double lowerDriveW;
  private double upperC;
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
  public void prepare(int stepMonth, double baseW, double factor) {
    month = stepMonth;
    groundBaseW = baseW;
    groundFactor = factor;
    exchangeWK = upperC >= lowerC ? stableWK : turningWK;
    lowerSumWK =
        half.wattsPerK()
            + exchangeWK
            + (1 - upperShare) * groundFactor * ground.internalWK()
            + inflow.wattsPerK(month) / 2;
    lowerDriveW =
        half.wattsPerK() * lowerC
            - (1 - upperShare) * groundFactor * groundBaseW
            + inflow.wattsPerK(month) / 2 * inflow.temperatureC(month);
  }

  @Override
  public double sumWK() {
    return half.wattsPerK()
        + exchangeWK
        + upperShare * groundFactor * ground.internalWK()
        + inflow.wattsPerK(month) / 2
        - exchangeWK * exchangeWK / lowerSumWK;
  }

  @Override
  public double driveW() {
    return half.wattsPerK() * upperC
        - upperShare * groundFactor * groundBaseW
        + inflow.wattsPerK(month) / 2 * inflow.temperatureC(month)
        + exchangeWK * lowerDriveW / lowerSumWK;
  }

  @Override
  public void settle(double newUpperC, HeatLedger ledger) {
    double newLowerC = (lowerDriveW + exchangeWK * newUpperC) / lowerSumWK;
    double wetted = upperShare * newUpperC + (1 - upperShare) * newLowerC;
    ledger.add(ledger.ground, month, -groundFactor * (groundBaseW + ground.internalWK() * wetted));
    ledger.add(
        ledger.inflow,
        month,
        inflow.wattsPerK(month) * (inflow.temperatureC(month) - (newUpperC + newLowerC) / 2));
    ledger.add(ledger.stored, month, half.wattsPerK() * (newUpperC - upperC + newLowerC - lowerC));
    upperC = newUpperC;
    lowerC = newLowerC;
  }

  @Override
  public void start(double startC) {
    upperC = startC;
    lowerC = startC;
  }

  @Override
  public double surfaceC() {
    return upperC;
  }

  @Override
  public double meanC() {
    return (upperC + lowerC) / 2;
  }
}
