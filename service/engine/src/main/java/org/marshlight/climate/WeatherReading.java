package org.marshlight.climate;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Quantity;

/**
 * A weather file reduced to what a plan can hold.
 *
 * @param place where its weather was taken
 * @param climate goes into {@code site.climate} unchanged
 * @param hours goes into {@code site.hours} where a real year is to drive the tank
 * @param repairs what was repaired, and how often
 */
public record WeatherReading(
    Place place, ClimateChoice climate, HoursDesign hours, List<Notice> repairs) {

  /**
   * Where a file's weather was taken.
   *
   * @param latitudeDeg latitude, goes into {@code site.latitudeDeg}
   * @param longitudeDeg longitude, goes into {@code site.longitudeDeg}
   * @param elevationM elevation, goes into {@code site.elevationM}
   */
  @Meaning("Where a file's weather was taken.")
  public record Place(
      @Meaning("Place as the file names it.") @Size(max = 200) String name,
      @Quantity(unit = "deg", min = -90, max = 90, meaning = "Latitude of the file.")
          double latitudeDeg,
      @Quantity(unit = "deg", min = -180, max = 180, meaning = "Longitude of the file.")
          double longitudeDeg,
      @Quantity(unit = "m", min = -430, max = 5500, meaning = "Height above sea level.")
          double elevationM) {}
}
