package org.marshlight.study;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Standard uncertainty of the climate: one departure for all months of the year.
 *
 * @param airTemperatureK of the air's mean temperature
 * @param solarPercent of the sun's radiation
 * @param rainPercent of the rain
 * @param windPercent of the wind
 */
@Meaning("Standard uncertainty of the climate: one departure for all months of the year.")
public record ClimateSpread(
    @Quantity(
            unit = "K",
            min = 0,
            max = 5,
            meaning = "Standard uncertainty of the air's mean temperature; certain if not given.")
        Double airTemperatureK,
    @Quantity(
            unit = "%",
            min = 0,
            max = 50,
            meaning = "Standard uncertainty of the sun's radiation; certain if not given.")
        Double solarPercent,
    @Quantity(
            unit = "%",
            min = 0,
            max = 80,
            meaning = "Standard uncertainty of the rain; certain if not given.")
        Double rainPercent,
    @Quantity(
            unit = "%",
            min = 0,
            max = 80,
            meaning = "Standard uncertainty of the wind; certain if not given.")
        Double windPercent) {}
