package org.marshlight.digester;

/** Liquor of one temperature. */
final class MixedLiquor implements Liquor {

  private final HeldHeat held;
  private final GroundExchange ground;
  private final Inflow inflow;

  private int month;
  private double groundBaseW;
  private double groundFactor;
  private double temperatureC;

  MixedLiquor(HeldHeat held, GroundExchange ground, Inflow inflow) {
    this.held = held;
    this.ground = ground;
    this.inflow = inflow;
  }

  @Override
  public void prepare(int stepMonth, double baseW, double factor) {
    month = stepMonth;
    groundBaseW = baseW;
    groundFactor = factor;
  }

  @Override
  public double sumWK() {
    return held.wattsPerK() + groundFactor * ground.internalWK() + inflow.wattsPerK(month);
  }

  @Override
  public double driveW() {
    return held.wattsPerK() * temperatureC
        - groundFactor * groundBaseW
        + inflow.wattsPerK(month) * inflow.temperatureC(month);
  }

  @Override
  public void settle(double newC, HeatLedger ledger) {
    ledger.add(ledger.ground, month, -groundFactor * (groundBaseW + ground.internalWK() * newC));
    ledger.add(ledger.inflow, month, inflow.wattsPerK(month) * (inflow.temperatureC(month) - newC));
    ledger.add(ledger.stored, month, held.wattsPerK() * (newC - temperatureC));
    temperatureC = newC;
  }

  @Override
  public void start(double startC) {
    temperatureC = startC;
  }

  @Override
  public double surfaceC() {
    return temperatureC;
  }

  @Override
  public double meanC() {
    return temperatureC;
  }
}
