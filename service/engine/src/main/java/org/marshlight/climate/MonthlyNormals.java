package org.marshlight.climate;

import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;

/**
 * Twelve monthly normals, January first.
 *
 * @param meanMaxAirTemperatureC mean of the daily highest temperatures
 * @param meanMinAirTemperatureC mean of the daily lowest temperatures
 * @param horizontalSolarKWhM2Day global radiation on the horizontal
 * @param windMS wind speed
 * @param relativeHumidityPercent relative humidity at mean temperature
 * @param dewPointC dew point; takes the place of relative humidity
 */
@Meaning("Twelve monthly normals, January first.")
public record MonthlyNormals(
    @NotNull
        @TwelveMonths
        @Quantity(unit = "Cel", min = -60, max = 50, meaning = "Mean air temperature.")
        List<Double> meanAirTemperatureC,
    @TwelveMonths
        @Quantity(
            unit = "Cel",
            min = -55,
            max = 60,
            meaning = "Mean of the daily highest air temperatures.")
        List<Double> meanMaxAirTemperatureC,
    @TwelveMonths
        @Quantity(
            unit = "Cel",
            min = -75,
            max = 45,
            meaning = "Mean of the daily lowest air temperatures.")
        List<Double> meanMinAirTemperatureC,
    @TwelveMonths
        @Quantity(
            unit = "kW.h/(m2.d)",
            min = 0,
            max = 13,
            meaning =
                "Global radiation on the horizontal, mean day of the month; estimated from the"
                    + " daily extremes of temperature if not given.")
        List<Double> horizontalSolarKWhM2Day,
    @TwelveMonths @Quantity(unit = "m/s", min = 0, max = 25, meaning = "Mean wind speed.")
        List<Double> windMS,
    @Quantity(
            unit = "m",
            min = 0.5,
            max = 100,
            meaning = "Height at which the wind was measured.",
            usual = "climate.default.wind-height")
        Double windHeightM,
    @TwelveMonths @Quantity(unit = "%", min = 5, max = 100, meaning = "Mean relative humidity.")
        List<Double> relativeHumidityPercent,
    @TwelveMonths
        @Quantity(
            unit = "Cel",
            min = -70,
            max = 35,
            meaning = "Mean dew point; takes the place of relative humidity.")
        List<Double> dewPointC,
    @TwelveMonths @Quantity(unit = "mm", min = 0, max = 3000, meaning = "Rain in the month.")
        List<Double> rainMm) {

  /** The same normals with another rain, mm in each month. */
  MonthlyNormals withRain(List<Double> otherRainMm) {
    return new MonthlyNormals(
        meanAirTemperatureC,
        meanMaxAirTemperatureC,
        meanMinAirTemperatureC,
        horizontalSolarKWhM2Day,
        windMS,
        windHeightM,
        relativeHumidityPercent,
        dewPointC,
        otherRainMm);
  }
}
