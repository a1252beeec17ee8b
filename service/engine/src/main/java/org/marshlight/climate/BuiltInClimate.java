package org.marshlight.climate;

import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A climate that a plan can name instead of giving normals.
 *
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @param elevationM above sea level
 */
@Meaning("A climate that a plan can name instead of giving normals.")
public record BuiltInClimate(
    @Meaning("Stable id, used in plans.") @Size(max = 60) String id,
    @Meaning("Public weather station.") @Size(max = 200) String name,
    @Meaning("Sort of climate.") @Size(max = 60) String kind,
    @Quantity(unit = "deg", min = -90, max = 90, meaning = "Latitude, north positive.")
        double latitudeDeg,
    @Quantity(unit = "deg", min = -180, max = 180, meaning = "Longitude, east positive.")
        double longitudeDeg,
    @Quantity(unit = "m", min = -430, max = 5500, meaning = "Height above sea level.")
        double elevationM,
    @Meaning("Id of the data set.") @Size(max = 100) String source,
    @Meaning("How well founded the numbers are.") @Size(max = 40) String mark,
    @Meaning("Id of the data set of the rain; null if the climate has no rain.") @Size(max = 100)
        String rainSource,
    @Meaning("How well founded the rain is; null if the climate has no rain.") @Size(max = 40)
        String rainMark,
    @Meaning("Limits of the data.") @Size(max = 1000) String note,
    @Meaning("The normals.") MonthlyNormals monthly) {}
