package org.marshlight.digester;

/** Liquor of one temperature. */
final class MixedLiquor extends Liquor {

  private final HeldHeat held;
  private final GroundExchange ground;
  private final Inflow inflow;

  private double heldWK;
  private int month;
  private double groundBaseW;
  private double groundFactor;

  MixedLiquor(HeldHeat held, GroundExchange ground, Inflow inflow) {
    this.held = held;
    this.ground = ground;
    this.inflow = inflow;
  }

  @Override
  void stepOf(double hours) {
    heldWK = held.wattsPerK(hours);
  }

  @Override
  void prepare(int stepMonth, double baseW, double factor) {
    month = stepMonth;
    groundBaseW = baseW;
    groundFactor = factor;
    double inflowWK = inflow.wattsPerK(month);
    sumWK = heldWK + groundFactor * ground.internalWK() + inflowWK;
    driveW = heldWK * surfaceC - groundFactor * groundBaseW + inflowWK * inflow.temperatureC(month);
  }

  @Override
  void book(double newC, HeatLedger ledger) {
    ledger.add(ledger.ground, month, -groundFactor * (groundBaseW + ground.internalWK() * newC));
    ledger.add(ledger.inflow, month, inflow.wattsPerK(month) * (inflow.temperatureC(month) - newC));
    ledger.add(ledger.stored, month, heldWK * (newC - surfaceC));
  }

  @Override
  void settle(double newC) {
    surfaceC = newC;
    meanC = newC;
  }

  @Override
  void start(double startC) {
    settle(startC);
  }

  @Override
  void shift(double kelvin) {
    settle(surfaceC + kelvin);
  }
}
