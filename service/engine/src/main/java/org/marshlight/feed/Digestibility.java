package org.marshlight.feed;

/**
 * How a waste behaves in a tank.
 *
 * @param degradableShare share of COD that becomes methane in the end
 * @param hydrolysisRate35PerDay first-order hydrolysis at 35 Cel
 * @param settledShare share of COD that settles into the sludge
 * @param bod5PerCod five-day oxygen demand over COD, as it comes
 */
public record Digestibility(
    double degradableShare, double hydrolysisRate35PerDay, double settledShare, double bod5PerCod) {

  /**
   * Five-day oxygen demand of the degradable COD as it comes, kg/kg, at most 1: all of the demand,
   * as far as the degradable COD can hold it.
   */
  public double bod5OfDegradableCod() {
    return bod5PerCod < degradableShare ? bod5PerCod / degradableShare : 1;
  }

  /**
   * Five-day oxygen demand of the COD that no tank degrades, kg/kg, below 1: what the degradable
   * COD cannot hold. Zero unless {@code bod5PerCod} exceeds {@code degradableShare}.
   */
  public double bod5OfInertCod() {
    return bod5PerCod > degradableShare
        ? (bod5PerCod - degradableShare) / (1 - degradableShare)
        : 0;
  }
}
