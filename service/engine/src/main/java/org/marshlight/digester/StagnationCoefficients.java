package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** The day on which a dry glazed lid gets hottest. */
public record StagnationCoefficients(
    @Coefficient("digester.stagnation-air") double airC,
    @Coefficient("digester.stagnation-irradiance") double irradiance,
    @Coefficient("digester.stagnation-wind") double windMS) {}
