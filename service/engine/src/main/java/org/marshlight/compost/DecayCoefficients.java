package org.marshlight.compost;

import org.marshlight.evidence.Coefficient;

/** Numbers of decay and its losses; meaning and unit stand in the book. */
record DecayCoefficients(
    @Coefficient("compost.decay-stops-at-moisture") double stopsAtMoisture,
    @Coefficient("compost.decay-free-from-moisture") double freeFromMoisture,
    @Coefficient("compost.decay-without-air") double withoutAir,
    @Coefficient("compost.decay-free-to-ratio") double freeToRatio,
    @Coefficient("compost.rich-ratio") double richRatio,
    @Coefficient("compost.rich-nitrogen-loss") double richLoss,
    @Coefficient("compost.poor-ratio") double poorRatio,
    @Coefficient("compost.poor-nitrogen-loss") double poorLoss,
    @Coefficient("compost.leached-nitrogen") double leachedNitrogen,
    @Coefficient("compost.leached-phosphorus") double leachedPhosphorus,
    @Coefficient("compost.leached-potassium") double leachedPotassium,
    @Coefficient("compost.mineral-nitrogen") double mineralNitrogen,
    @Coefficient("compost.finished-moisture") double finishedMoisture,
    @Coefficient("compost.finished-water-holding") double finishedWaterHoldingKgKg,
    @Coefficient("compost.finished-bulk-density") double finishedBulkDensityKgM3,
    @Coefficient("compost.evaporating-share") double evaporatingShare) {}
