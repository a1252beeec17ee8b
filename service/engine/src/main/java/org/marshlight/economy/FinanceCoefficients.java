package org.marshlight.economy;

import org.marshlight.evidence.Coefficient;

/**
 * What an appraisal rests on beside the plan's own terms.
 *
 * @param failingShare share of working plants that fall out of use in a year
 * @param priceSwing share by which fuel prices are moved
 * @param lifeSwing share by which the life is moved
 */
public record FinanceCoefficients(
    @Coefficient("economy.failing-share") double failingShare,
    @Coefficient("economy.price-swing") double priceSwing,
    @Coefficient("economy.life-swing") double lifeSwing) {}
