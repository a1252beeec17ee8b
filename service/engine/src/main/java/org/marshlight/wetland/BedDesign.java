package org.marshlight.wetland;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/** One planted bed; water passes the beds in the order of the list. */
@Meaning("One planted bed; water passes the beds in the order of the list.")
public record BedDesign(
    @Meaning("Open water, or water below a gravel surface.") @Usual("horizontal-subsurface")
        BedKind kind,
    @Quantity(
            unit = "m2",
            min = 0.5,
            max = 20000,
            meaning = "Area of the bed.",
            usual = "wetland.default.bed-area")
        Double areaM2,
    @Quantity(
            unit = "m",
            min = 0.1,
            max = 1.5,
            meaning = "Depth of the water.",
            usual = "wetland.default.water-depth")
        Double depthM,
    @Quantity(
            unit = "m",
            min = 0.5,
            max = 500,
            meaning = "Length along the flow; twice the width if not given.")
        Double lengthM,
    @Meaning("Id of a medium of the catalogue; for beds with water below the surface.")
        @CatalogueId("media")
        @Usual("medium-gravel")
        @Size(max = 60)
        String medium,
    @Meaning("Id of a plant of the catalogue.")
        @CatalogueId("plants")
        @Usual("broadleaf-cattail")
        @Size(max = 60)
        String plant,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1,
            meaning = "Share of storage organs lifted; tops are cut on the same share of area.",
            usual = "wetland.default.harvested-fraction")
        Double harvestedFraction,
    @Size(max = 12)
        @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Months in which the bed is passed by, 1 = January.")
        List<Integer> monthsOff,
    @Quantity(
            unit = "m",
            min = 0,
            max = 0.6,
            meaning = "Depth of mulch kept over the bed; for beds with water below the surface.",
            usual = "wetland.default.mulch")
        Double mulchM,
    @Quantity(
            unit = "1",
            min = 0.05,
            max = 1,
            meaning = "Share of sunlight that a cover over the bed lets through; 1 in the open.",
            usual = "wetland.default.cover-light")
        Double coverLightFraction,
    @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Month of the harvest, 1 = January; the plant's own if not given.")
        Integer harvestMonth) {

  /** Whether the bed is passed by in a month, 0 = January. */
  public boolean passedBy(int month) {
    return monthsOff != null && monthsOff.contains(month + 1);
  }
}
