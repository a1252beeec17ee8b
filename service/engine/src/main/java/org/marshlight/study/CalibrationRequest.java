package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.loop.Plan;

/**
 * Does a tank that was built do what its plan says, and which coefficients fit it?
 *
 * @param logbook readings as they were written down, as comma-separated values
 * @param fit ids of coefficients to fit
 * @param draws draws of the band
 */
@Meaning("Does a tank that was built do what its plan says, and which coefficients fit it?")
public record CalibrationRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @Size(max = 24) @Meaning("What was read, month by month.")
        List<@NotNull @Valid Reading> readings,
    @Size(max = 200000)
        @Meaning(
            "Readings as they were written down, comma-separated (RFC 4180) with the columns date"
                + " (such as 2026-01-31), liquorTemperatureC and gasMeterM3, the last as the meter"
                + " stands.")
        String logbook,
    @Quantity(
            unit = "K",
            min = 0.01,
            max = 20,
            meaning = "Standard uncertainty of a month's temperature.",
            usual = "study.default.temperature-uncertainty")
        Double temperatureUncertaintyK,
    @Quantity(
            unit = "%",
            min = 0.1,
            max = 100,
            meaning = "Standard uncertainty of a month's gas.",
            usual = "study.default.gas-uncertainty")
        Double gasUncertaintyPercent,
    @Size(max = 8)
        @Meaning("Ids of coefficients to fit; with none, the readings are compared and no more.")
        List<@NotNull @Size(max = 200) String> fit,
    @Quantity(
            unit = "1",
            min = 16,
            max = 16384,
            meaning = "Draws of the band with which the readings are compared.",
            usual = "study.default.band-draws")
        Integer draws,
    @Quantity(
            unit = "1",
            min = 0,
            max = 2147483647,
            meaning = "Seed of the draws.",
            usual = "study.default.seed")
        Integer seed)
    implements StudyRequest<CalibrationStudy> {

  @Override
  public PreparedStudy<CalibrationStudy> prepare() {
    return Calibration.of(Settings.of(this));
  }
}
