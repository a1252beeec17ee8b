package org.marshlight.climate;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * Where the home stands.
 *
 * @param latitudeDeg north positive; required with monthly normals, otherwise the station's
 * @param longitudeDeg east positive; the station's, or not needed
 * @param elevationM above sea level; the station's, or a stated default
 * @param horizonDeg what stands before the sun, by sector
 * @param snowMonths months in which snow lies
 * @param hours a real year hour by hour
 */
@Meaning("Where the home stands.")
public record SiteDesign(
    @NotNull @Valid @Meaning("Monthly normals, or the id of a built-in climate.")
        ClimateChoice climate,
    @Quantity(
            unit = "deg",
            min = -90,
            max = 90,
            meaning =
                "Latitude, north positive; required with monthly normals, else the station's.")
        Double latitudeDeg,
    @Quantity(unit = "deg", min = -180, max = 180, meaning = "Longitude, east positive.")
        Double longitudeDeg,
    @Quantity(
            unit = "m",
            min = -430,
            max = 5500,
            meaning = "Height above sea level; the station's where a built-in climate is named.")
        Double elevationM,
    @Meaning("Id of a soil of the catalogue.")
        @CatalogueId("soils")
        @Usual("moist-loam")
        @Size(max = 60)
        String soil,
    @Size(min = 12, max = 12)
        @Quantity(
            unit = "deg",
            min = 0,
            max = 80,
            meaning =
                "Height of what stands before the sun in twelve sectors of 30 deg, clockwise, the"
                    + " first about true north; nothing if not given.")
        List<Double> horizonDeg,
    @Size(max = 12)
        @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Months in which snow lies, 1 = January; none if not given.")
        List<Integer> snowMonths,
    @Valid
        @Meaning(
            "A real year hour by hour, which then drives the tank in place of the monthly normals.")
        HoursDesign hours) {

  /** The same site driven by its monthly normals. */
  public SiteDesign withoutHours() {
    return new SiteDesign(
        climate, latitudeDeg, longitudeDeg, elevationM, soil, horizonDeg, snowMonths, null);
  }
}
