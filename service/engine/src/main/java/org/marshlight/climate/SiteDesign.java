package org.marshlight.climate;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * Where the home stands.
 *
 * @param climate monthly normals, or the id of a built-in climate
 * @param latitudeDeg north positive; required with monthly normals, otherwise the station's
 * @param longitudeDeg east positive; the station's, or not needed
 * @param elevationM above sea level; the station's, or a stated default
 * @param soil id of a soil of the catalogue
 */
@Meaning("Where the home stands.")
public record SiteDesign(
    @NotNull @Valid @Meaning("Monthly normals, or the id of a built-in climate.")
        ClimateChoice climate,
    @Quantity(
            unit = "deg",
            low = -90,
            high = 90,
            meaning =
                "Latitude, north positive; required with monthly normals, else the station's.")
        Double latitudeDeg,
    @Quantity(unit = "deg", low = -180, high = 180, meaning = "Longitude, east positive.")
        Double longitudeDeg,
    @Quantity(
            unit = "m",
            low = -430,
            high = 5500,
            meaning = "Height above sea level; the station's where a built-in climate is named.")
        Double elevationM,
    @Meaning("Id of a soil of the catalogue.")
        @CatalogueId("soils")
        @Usual("moist-loam")
        @Size(max = 60)
        String soil) {}
