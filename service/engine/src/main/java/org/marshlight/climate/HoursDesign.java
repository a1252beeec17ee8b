package org.marshlight.climate;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A year of 8760 hours in local standard time, the first ending at 1 h on 1 January. What is not
 * given follows from the monthly normals.
 */
@Meaning("A year of 8760 hours in local standard time, the first ending at 1 h on 1 January.")
public record HoursDesign(
    @NotNull
        @Quantity(
            unit = "h",
            min = -12,
            max = 14,
            meaning = "Local standard time less universal time.")
        Double utcOffsetH,
    @NotNull
        @Size(min = HOURS, max = HOURS)
        @Quantity(unit = "Cel", min = -80, max = 60, meaning = "Air temperature of each hour.")
        List<Double> airTemperatureC,
    @Size(min = HOURS, max = HOURS)
        @Quantity(unit = "Cel", min = -90, max = 40, meaning = "Dew point of each hour.")
        List<Double> dewPointC,
    @NotNull
        @Size(min = HOURS, max = HOURS)
        @Quantity(
            unit = "W/m2",
            min = 0,
            max = 1500,
            meaning = "Global radiation on the horizontal, mean of each hour.")
        List<Double> globalWM2,
    @NotNull
        @Size(min = HOURS, max = HOURS)
        @Quantity(
            unit = "W/m2",
            min = 0,
            max = 1000,
            meaning = "Diffuse radiation on the horizontal, mean of each hour.")
        List<Double> diffuseWM2,
    @Size(min = HOURS, max = HOURS)
        @Quantity(unit = "m/s", min = 0, max = 60, meaning = "Wind at 10 m.")
        List<Double> windMS) {

  /** Hours of the year. */
  public static final int HOURS = 8760;
}
