package org.marshlight.climate;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;

/**
 * The climate of a site: a built-in one by id, whose rain may be replaced, or monthly normals.
 *
 * @param rainMm rain of the place in place of the built-in climate's; only beside an id
 */
@Meaning("The climate of a site: a built-in one by id, or twelve monthly normals.")
public record ClimateChoice(
    @Meaning("Id of a built-in climate.") @CatalogueId("climates") @Size(max = 60) String id,
    @Valid @Meaning("Twelve normals of each quantity.") MonthlyNormals monthly,
    @TwelveMonths
        @Quantity(
            unit = "mm",
            min = 0,
            max = 3000,
            meaning =
                "Rain in the month, in place of the built-in climate's; only beside an id. The"
                    + " built-in climate's if not given.")
        List<Double> rainMm) {

  /**
   * A climate without rain of its own.
   *
   * @param id id of a built-in climate, or null
   * @param monthly normals, or null
   */
  public ClimateChoice(String id, MonthlyNormals monthly) {
    this(id, monthly, null);
  }

  /** The built-in climate that is named; null if none is, or none has that id. */
  public BuiltInClimate station() {
    return id == null ? null : BuiltInClimates.standard().find(id).orElse(null);
  }

  /** The normals that apply, given or of the named station; null if there are none. */
  public MonthlyNormals normals() {
    BuiltInClimate station = station();
    if (station == null) {
      return monthly;
    }
    return rainMm == null ? station.monthly() : station.monthly().withRain(rainMm);
  }
}
