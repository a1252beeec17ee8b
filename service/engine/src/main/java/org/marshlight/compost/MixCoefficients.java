package org.marshlight.compost;

import org.marshlight.evidence.Coefficient;

/** Numbers of the mix; meaning and unit stand in the book. */
record MixCoefficients(
    @Coefficient("compost.moisture-least") double moistureLeast,
    @Coefficient("compost.moisture-most") double moistureMost,
    @Coefficient("compost.ratio-least") double ratioLeast,
    @Coefficient("compost.ratio-most") double ratioMost,
    @Coefficient("compost.moisture-bearable-least") double moistureBearableLeast,
    @Coefficient("compost.moisture-bearable-most") double moistureBearableMost,
    @Coefficient("compost.ratio-bearable-least") double ratioBearableLeast,
    @Coefficient("compost.ratio-bearable-most") double ratioBearableMost,
    @Coefficient("compost.free-air-least") double freeAirLeast,
    @Coefficient("compost.soluble-organics") double solubleOrganics,
    @Coefficient("compost.soluble-minerals") double solubleMinerals,
    @Coefficient("compost.soluble-ammonium") double solubleAmmonium,
    @Coefficient("compost.soluble-phosphorus") double solublePhosphorus,
    @Coefficient("compost.soluble-potassium") double solublePotassium) {}
