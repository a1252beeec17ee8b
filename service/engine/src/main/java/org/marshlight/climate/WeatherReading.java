package org.marshlight.climate;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Quantity;

/**
 * A weather file reduced to a site's climate.
 *
 * @param name place as the file names it
 * @param latitudeDeg latitude of the file
 * @param longitudeDeg longitude of the file
 * @param elevationM elevation of the file
 * @param climate goes into {@code site.climate} unchanged
 * @param hours goes into {@code site.hours} where a real year is to drive the tank
 * @param repairs what was repaired, and how often
 */
@Meaning("A weather file reduced to a site's climate.")
public record WeatherReading(
    @Meaning("Place as the file names it.") @Size(max = 200) String name,
    @Quantity(unit = "deg", low = -90, high = 90, meaning = "Latitude of the file.")
        double latitudeDeg,
    @Quantity(unit = "deg", low = -180, high = 180, meaning = "Longitude of the file.")
        double longitudeDeg,
    @Quantity(unit = "m", low = -430, high = 5500, meaning = "Height above sea level.")
        double elevationM,
    @Meaning("Goes into site.climate unchanged.") ClimateChoice climate,
    @Meaning("Goes into site.hours where a real year is to drive the tank.") HoursDesign hours,
    @Meaning("What was repaired, and how often.") @Size(max = 20) List<Notice> repairs) {}
