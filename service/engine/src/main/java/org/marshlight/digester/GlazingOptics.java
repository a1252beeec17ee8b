package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How much sun passes glass: reflection by Fresnel, absorption by Bouguer. */
public final class GlazingOptics {

  private GlazingOptics() {}

  /** Angle of the beam inside the glass, by Snell. */
  @Formula(
      id = "digester.refraction-angle",
      symbol = "theta_2",
      expression = "arcsin(sin theta_1 / n)",
      unit = "rad",
      meaning = "Angle of the beam inside the glass.",
      source = "duffie-beckman",
      equation = "5.1.4")
  public static double refractionAngle(
      @Argument(symbol = "theta_1", unit = "rad", min = 0, max = 1.5708) double incidenceRad,
      @Argument(symbol = "n", unit = "1", min = 1.0001, max = 3) double refractiveIndex) {
    return FastMath.asin(FastMath.sin(incidenceRad) / refractiveIndex);
  }

  /** Share that passes panes which reflect but do not absorb. */
  @Formula(
      id = "digester.transmittance-of-reflection",
      symbol = "tau_r",
      expression =
          "mean over both polarisations of (1 - r) / (1 + (2N - 1) r);"
              + " r_perp = sin2(theta_2 - theta_1) / sin2(theta_2 + theta_1),"
              + " r_par = tan2(theta_2 - theta_1) / tan2(theta_2 + theta_1)",
      unit = "1",
      meaning = "Share of the beam that passes panes which reflect but do not absorb.",
      source = "duffie-beckman",
      equation = "5.1.8")
  public static double reflectionTransmittance(
      @Argument(symbol = "theta_1", unit = "rad", min = 0, max = 1.5707) double incidenceRad,
      @Argument(symbol = "n", unit = "1", min = 1.0001, max = 3) double refractiveIndex,
      @Argument(symbol = "N", unit = "1", min = 1, max = 4) double panes) {
    double cosOutside = FastMath.cos(incidenceRad);
    return reflectionTransmittance(
        cosOutside, cosInside(cosOutside, refractiveIndex), refractiveIndex, panes);
  }

  /**
   * The same from the cosines of the angles outside and inside the pane: Fresnel's equations with
   * the sines and tangents of sum and difference worked out.
   */
  static double reflectionTransmittance(
      double cosOutside, double cosInside, double refractiveIndex, double panes) {
    double across =
        (cosOutside - refractiveIndex * cosInside) / (cosOutside + refractiveIndex * cosInside);
    double along =
        (refractiveIndex * cosOutside - cosInside) / (refractiveIndex * cosOutside + cosInside);
    return (through(across * across, panes) + through(along * along, panes)) / 2;
  }

  /** Cosine of the angle inside a pane by Snell's law, from that outside. */
  static double cosInside(double cosOutside, double refractiveIndex) {
    return Math.sqrt(1 - (1 - cosOutside * cosOutside) / (refractiveIndex * refractiveIndex));
  }

  private static double through(double reflectance, double panes) {
    return (1 - reflectance) / (1 + (2 * panes - 1) * reflectance);
  }

  /** Share that passes panes which absorb but do not reflect. */
  @Formula(
      id = "digester.transmittance-of-absorption",
      symbol = "tau_a",
      expression = "exp(-K L N / cos theta_2)",
      unit = "1",
      meaning = "Share of the beam that passes panes which absorb but do not reflect.",
      source = "duffie-beckman",
      equation = "5.2.2")
  public static double absorptionTransmittance(
      @Argument(symbol = "K", unit = "/m", min = 0, max = 200) double extinctionPerM,
      @Argument(symbol = "L", unit = "m", min = 0, max = 0.05) double thicknessM,
      @Argument(symbol = "N", unit = "1", min = 1, max = 4) double panes,
      @Argument(symbol = "theta_2", unit = "rad", min = 0, max = 1.5) double refractionRad) {
    return absorptionTransmittance(
        extinctionPerM * thicknessM * panes, FastMath.cos(refractionRad));
  }

  /** The same from extinction times all thickness, and the cosine of the angle inside. */
  static double absorptionTransmittance(double opticalDepth, double cosInside) {
    return FastMath.exp(-opticalDepth / cosInside);
  }

  /** Angle at which beam would pass as sky diffuse does. */
  @Formula(
      id = "digester.sky-diffuse-angle",
      symbol = "theta_e,d",
      expression = "59.68 - 0.1388 beta + 0.001497 beta^2",
      unit = "deg",
      meaning = "Angle of incidence at which beam passes glass as even sky diffuse does.",
      source = "duffie-beckman",
      equation = "5.4.2")
  public static double skyDiffuseAngleDeg(
      @Argument(symbol = "beta", unit = "deg", min = 0, max = 90) double tiltDeg) {
    return 59.68 - 0.1388 * tiltDeg + 0.001497 * tiltDeg * tiltDeg;
  }

  /** Angle at which beam would pass as ground-reflected sun does. */
  @Formula(
      id = "digester.ground-diffuse-angle",
      symbol = "theta_e,g",
      expression = "90 - 0.5788 beta + 0.002693 beta^2",
      unit = "deg",
      meaning = "Angle of incidence at which beam passes glass as ground-reflected sun does.",
      source = "duffie-beckman",
      equation = "5.4.1")
  public static double groundDiffuseAngleDeg(
      @Argument(symbol = "beta", unit = "deg", min = 0, max = 90) double tiltDeg) {
    return 90 - 0.5788 * tiltDeg + 0.002693 * tiltDeg * tiltDeg;
  }

  /** Share of the sun on the glass that the absorber takes up. */
  @Formula(
      id = "digester.transmittance-absorptance",
      symbol = "(tau alpha)",
      expression = "1.01 tau_r tau_a alpha",
      unit = "1",
      meaning = "Share of the sun on the glass that the absorber below takes up.",
      source = "duffie-beckman",
      equation = "5.5.2")
  public static double transmittanceAbsorptance(
      @Argument(symbol = "tau_r", unit = "1", min = 0, max = 1) double reflectionTransmittance,
      @Argument(symbol = "tau_a", unit = "1", min = 0, max = 1) double absorptionTransmittance,
      @Argument(symbol = "alpha", unit = "1", min = 0, max = 0.99) double absorptance) {
    return 1.01 * reflectionTransmittance * absorptionTransmittance * absorptance;
  }
}
