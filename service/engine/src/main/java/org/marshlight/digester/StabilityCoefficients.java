package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** Limits beyond which a tank may fail. */
public record StabilityCoefficients(
    @Coefficient("digester.loading-limit-10") double loadingLimit10,
    @Coefficient("digester.loading-limit-35") double loadingLimit35,
    @Coefficient("digester.sludge-age-limit-10") double sludgeAgeLimit10,
    @Coefficient("digester.sludge-age-limit-35") double sludgeAgeLimit35,
    @Coefficient("digester.carbon-nitrogen-most") double carbonNitrogenMost,
    @Coefficient("digester.liquor-ph") double liquorPh,
    @Coefficient("digester.free-ammonia-limit") double freeAmmoniaLimit,
    @Coefficient("digester.acid-alkalinity-limit") double acidAlkalinityLimit,
    @Coefficient("digester.water-alkalinity") double waterAlkalinity,
    @Coefficient("digester.cod-sulphur-limit") double codSulphurLimit,
    @Coefficient("digester.inventory-factor") double inventoryFactor) {}
