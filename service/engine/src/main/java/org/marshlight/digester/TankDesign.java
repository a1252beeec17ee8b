package org.marshlight.digester;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * The septic tank.
 *
 * @param shape rectangular or cylindrical (upright)
 * @param compartments number of compartments in series
 * @param desludgingIntervalYears time between desludgings
 * @param liquorLayers layers of liquor that are told apart
 * @param scumResistanceM2KW thermal resistance of a floating scum
 * @param startUpMonth month in which a cold tank is first filled
 */
@Meaning("The septic tank.")
public record TankDesign(
    @Meaning("Shape of the tank.") @Usual("rectangular") TankShape shape,
    @Quantity(
            unit = "m3",
            min = 0.2,
            max = 500,
            meaning = "Liquid of all compartments together.",
            usual = "digester.default.liquid-volume")
        Double liquidVolumeM3,
    @Quantity(
            unit = "m",
            min = 0.3,
            max = 6,
            meaning = "Depth of the liquid.",
            usual = "digester.default.liquid-depth")
        Double liquidDepthM,
    @Quantity(
            unit = "m",
            min = 0.3,
            max = 60,
            meaning = "Inside length of a rectangular tank; twice the width if not given.")
        Double lengthM,
    @Quantity(
            unit = "m",
            min = 0,
            max = 3,
            meaning = "From ground surface to the underside of the lid.",
            usual = "digester.default.burial-depth")
        Double burialDepthM,
    @Quantity(
            unit = "m2.K/W",
            min = 0.01,
            max = 10,
            meaning = "Thermal resistance of walls and floor, material alone.",
            usual = "digester.default.wall-resistance")
        Double wallResistanceM2KW,
    @Quantity(
            unit = "m2.K/W",
            min = 0.005,
            max = 10,
            meaning = "Thermal resistance of the lid, material alone.",
            usual = "digester.default.lid-resistance")
        Double lidResistanceM2KW,
    @Quantity(
            unit = "1",
            min = 1,
            max = 6,
            meaning = "Compartments in series.",
            usual = "digester.default.compartments")
        Integer compartments,
    @Quantity(
            unit = "a",
            min = 0.5,
            max = 20,
            meaning = "Time between desludgings; taken to whole years.",
            usual = "digester.default.desludging-interval")
        Double desludgingIntervalYears,
    @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Month at whose end the tank is desludged, 1 = January.",
            usual = "digester.default.desludging-month")
        Integer desludgingMonth,
    @Quantity(
            unit = "1",
            min = 1,
            max = 2,
            meaning = "Layers of liquor that are told apart: one mixed, or an upper and a lower.",
            usual = "digester.default.liquor-layers")
        Integer liquorLayers,
    @Quantity(
            unit = "m2.K/W",
            min = 0,
            max = 5,
            meaning = "Thermal resistance of a floating scum; none if not given.",
            usual = "digester.default.scum-resistance")
        Double scumResistanceM2KW,
    @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning =
                "Month in which a cold tank is first filled, 1 = January; its first three years"
                    + " are then told too. Not told if not given.")
        Integer startUpMonth) {

  /** The same tank with more insulation round walls and floor. */
  TankDesign insulated(double moreM2KW) {
    return new TankDesign(
        shape,
        liquidVolumeM3,
        liquidDepthM,
        lengthM,
        burialDepthM,
        wallResistanceM2KW + moreM2KW,
        lidResistanceM2KW,
        compartments,
        desludgingIntervalYears,
        desludgingMonth,
        liquorLayers,
        scumResistanceM2KW,
        startUpMonth);
  }
}
