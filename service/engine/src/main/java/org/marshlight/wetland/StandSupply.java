package org.marshlight.wetland;

/**
 * What a bed receives for its stand in each month; arrays are not to be changed.
 *
 * @param nitrogenKg nitrogen that the water brings
 * @param phosphorusKg phosphorus that the water brings
 * @param potassiumKg potassium that the water brings
 * @param waterShare water that the stand gets over what it would evaporate if it lacked none, 0 to
 *     1
 */
public record StandSupply(
    double[] nitrogenKg, double[] phosphorusKg, double[] potassiumKg, double[] waterShare) {}
