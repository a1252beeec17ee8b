package org.marshlight.compost;

import org.marshlight.evidence.Coefficient;

/** Numbers of what compost gives to land; meaning and unit stand in the book. */
record ReturnCoefficients(
    @Coefficient("compost.available-nitrogen") double availableNitrogen,
    @Coefficient("compost.available-nitrogen-rich") double availableNitrogenRich,
    @Coefficient("compost.rich-compost") double richCompost,
    @Coefficient("compost.available-nitrogen-later") double availableNitrogenLater,
    @Coefficient("compost.available-phosphorus") double availablePhosphorus,
    @Coefficient("compost.available-potassium") double availablePotassium,
    @Coefficient("compost.garden-yield") double gardenYieldTHa,
    @Coefficient("compost.removal-of-nitrogen") double removalOfNitrogenKgT,
    @Coefficient("compost.removal-of-phosphorus") double removalOfPhosphorusKgT,
    @Coefficient("compost.removal-of-potassium") double removalOfPotassiumKgT,
    @Coefficient("compost.nitrogen-limit") double nitrogenLimitKgHa,
    @Coefficient("compost.urea-price") double ureaPricePerTonne,
    @Coefficient("compost.urea-nitrogen") double ureaNitrogen,
    @Coefficient("compost.diammonium-phosphate-price") double phosphatePricePerTonne,
    @Coefficient("compost.diammonium-phosphate-p2o5") double phosphateP2O5,
    @Coefficient("compost.diammonium-phosphate-nitrogen") double phosphateNitrogen,
    @Coefficient("compost.potash-price") double potashPricePerTonne,
    @Coefficient("compost.potash-k2o") double potashK2O) {}
