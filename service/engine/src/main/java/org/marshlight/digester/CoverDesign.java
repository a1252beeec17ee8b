package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;
import org.marshlight.contract.WithBuilder;

/**
 * What lies over the lid.
 *
 * @param azimuthDeg way the glass faces, clockwise from true north
 * @param nightResistanceM2KW resistance laid over the glass from sunset to sunrise
 */
@WithBuilder
@Meaning("What lies over the lid.")
public record CoverDesign(
    @Meaning("Nothing, earth or glass.") @Usual("glazed") CoverKind kind,
    @Quantity(
            unit = "m2",
            min = 0.1,
            max = 500,
            meaning = "Area of the glass; the lid's area if not given.")
        Double apertureM2,
    @Quantity(
            unit = "deg",
            min = 0,
            max = 90,
            meaning = "Slope of the glass from the horizontal.",
            usual = "digester.default.glass-tilt")
        Double tiltDeg,
    @Quantity(
            unit = "deg",
            min = 0,
            max = 360,
            meaning =
                "Way the glass faces, clockwise from true north; towards the equator if not given.")
        Double azimuthDeg,
    @Quantity(
            unit = "1",
            min = 1,
            max = 2,
            meaning = "Panes of glass.",
            usual = "digester.default.glass-layers")
        Integer layers,
    @Quantity(
            unit = "1",
            min = 0.1,
            max = 0.99,
            meaning = "Share of transmitted sun that the lid takes up.",
            usual = "digester.default.absorptance")
        Double absorptance,
    @Quantity(
            unit = "m2.K/W",
            min = 0.05,
            max = 20,
            meaning = "Thermal resistance of the back and sides under the glass.",
            usual = "digester.default.enclosure-resistance")
        Double enclosureResistanceM2KW,
    @Quantity(
            unit = "m2.K/W",
            min = 0,
            max = 10,
            meaning = "Resistance laid over the glass from sunset to sunrise; none if not given.",
            usual = "digester.default.night-resistance")
        Double nightResistanceM2KW) {

  /** Steepest glass that counts as a roof over the lid, as in Klein's form of its loss. */
  static final double STEEPEST_ROOF_DEG = 70;

  /** No cover. */
  public static final CoverDesign UNCOVERED =
      new CoverDesign(CoverKind.NONE, null, null, null, null, null, null, null);

  /**
   * A copy with the glass as large as the lid and facing the equator where that is not given.
   *
   * @param lidM2 area of the lid
   * @param latitudeRad latitude of the site
   */
  public CoverDesign over(double lidM2, double latitudeRad) {
    return new CoverDesign(
        kind,
        apertureM2 == null ? Double.valueOf(lidM2) : apertureM2,
        tiltDeg,
        azimuthDeg == null ? Double.valueOf(latitudeRad >= 0 ? 180 : 0) : azimuthDeg,
        layers,
        absorptance,
        enclosureResistanceM2KW,
        nightResistanceM2KW);
  }

  /**
   * Area of the glass whose sun the lid takes up: as much as fits over the lid at its slope. Glass
   * steeper than {@value #STEEPEST_ROOF_DEG} degrees counts as of that slope, since it is a wall
   * beside the lid and no roof over it.
   *
   * @param lidM2 area of the lid
   */
  double collectingM2(double lidM2) {
    return Math.min(apertureM2, roomM2(lidM2));
  }

  /**
   * Area of the glass that fits over the lid at its slope, m2.
   *
   * @param lidM2 area of the lid
   */
  double roomM2(double lidM2) {
    return lidM2 / FastMath.cos(FastMath.toRadians(Math.min(STEEPEST_ROOF_DEG, tiltDeg)));
  }
}
