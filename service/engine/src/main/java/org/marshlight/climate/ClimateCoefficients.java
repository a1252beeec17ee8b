package org.marshlight.climate;

import org.marshlight.evidence.Coefficient;

/** Coefficients of the climate models. */
public record ClimateCoefficients(
    @Coefficient("climate.wind-where-unknown") double windWhereUnknown,
    @Coefficient("climate.rain-where-unknown") double rainWhereUnknown,
    @Coefficient("climate.dew-point-below-minimum") double dewPointBelowMinimum,
    @Coefficient("climate.greatest-clearness") double greatestClearness,
    @Coefficient("climate.least-daily-range") double leastDailyRange,
    @Coefficient("climate.ground-surface-above-air") double groundSurfaceAboveAir,
    @Coefficient("climate.ground-surface-swing") double groundSurfaceSwing,
    @Coefficient("climate.ground-reflectance") double groundReflectance,
    @Coefficient("climate.snow-reflectance") double snowReflectance,
    @Coefficient("climate.radiation-of-range") double radiationOfRange) {}
