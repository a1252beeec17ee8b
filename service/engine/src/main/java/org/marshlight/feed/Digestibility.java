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
    double degradableShare,
    double hydrolysisRate35PerDay,
    double settledShare,
    double bod5PerCod) {}
