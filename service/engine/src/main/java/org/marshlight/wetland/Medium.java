package org.marshlight.wetland;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/**
 * A medium of the catalogue, for beds with water below the surface.
 *
 * @param porosity share of its volume that water fills
 * @param conductivityMDay hydraulic conductivity when clean, m/d
 * @param greatestDepthM deepest water for which it is used, m
 */
@CatalogueRow("media")
public record Medium(
    @Coefficient("porosity") double porosity,
    @Coefficient("clean-conductivity") double conductivityMDay,
    @Coefficient("greatest-depth") double greatestDepthM) {}
