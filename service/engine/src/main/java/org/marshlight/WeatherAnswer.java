package org.marshlight;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.HoursDesign;
import org.marshlight.climate.WeatherFile;
import org.marshlight.climate.WeatherReading;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Notice;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/**
 * A weather file reduced to a site's climate, with the cautions that go with every answer.
 *
 * @param hours goes into {@code site.hours} unchanged; null where the hours were not asked for
 */
@Meaning("A weather file reduced to a site's climate.")
public record WeatherAnswer(
    @NotNull @Meaning("Where its weather was taken.") WeatherReading.Place place,
    @NotNull @Meaning("Goes into site.climate unchanged.") ClimateChoice climate,
    @Meaning("Goes into site.hours where a real year is to drive the tank; null if not asked for.")
        HoursDesign hours,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions,
    @Meaning("What was repaired.") @Size(max = 20) List<Notice> notices,
    @NotNull @Meaning("Which version answered.") Meta meta) {

  public WeatherAnswer {
    cautions = Cautioned.required(cautions);
    notices = List.copyOf(notices);
  }

  /**
   * Reads a weather file.
   *
   * @param file the file as sent, EPW or TMY3 text
   * @param withHours whether the hours are wanted beside the normals
   * @throws org.marshlight.contract.Faults if it is not a whole ordinary year; each names its line
   */
  public static WeatherAnswer of(byte[] file, boolean withHours) {
    WeatherReading reading = WeatherFile.read(file);
    return new WeatherAnswer(
        reading.place(),
        reading.climate(),
        withHours ? reading.hours() : null,
        CautionBook.standard().general(),
        reading.repairs(),
        Meta.WITHOUT_PLAN);
  }
}
