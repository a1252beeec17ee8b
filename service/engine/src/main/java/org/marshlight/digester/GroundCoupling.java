package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Heat between a sunk tank and the ground by the heated-basement method of ISO 13370, kept as the
 * second opinion on {@link PitCoupling}.
 */
public final class GroundCoupling {

  private GroundCoupling() {}

  /** Characteristic dimension of the floor. */
  @Formula(
      id = "digester.characteristic-dimension",
      symbol = "B'",
      expression = "A / (0.5 P)",
      unit = "m",
      meaning = "Characteristic dimension of the floor.",
      source = "iso-13370",
      equation = "2")
  public static double characteristicDimensionM(
      @Argument(symbol = "A", unit = "m2", min = 0.01, max = 10000) double floorAreaM2,
      @Argument(symbol = "P", unit = "m", min = 0.1, max = 1000) double perimeterM) {
    return floorAreaM2 / (0.5 * perimeterM);
  }

  /** Thickness of soil that holds back as much heat as a floor or wall. */
  @Formula(
      id = "digester.equivalent-thickness",
      symbol = "d",
      expression = "w + lambda R",
      unit = "m",
      meaning = "Thickness of soil that holds back as much heat as a floor or wall.",
      source = "iso-13370",
      equation = "3")
  public static double equivalentThicknessM(
      @Argument(symbol = "w", unit = "m", min = 0, max = 2) double wallThicknessM,
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.01, max = 10) double conductivity,
      @Argument(symbol = "R", unit = "m2.K/W", min = 0.001, max = 20) double resistance) {
    return wallThicknessM + conductivity * resistance;
  }

  /** Steady transmittance of a sunk floor. */
  @Formula(
      id = "digester.floor-transmittance",
      symbol = "U_bf",
      expression =
          "d_t + z/2 < B': 2 lambda ln(pi B' / (d_t + z/2) + 1) / (pi B' + d_t + z/2);"
              + " else lambda / (0.457 B' + d_t + z/2)",
      unit = "W/(m2.K)",
      meaning = "Steady transmittance of a floor below ground.",
      source = "iso-13370",
      equation = "10 and 11")
  public static double floorTransmittance(
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.01, max = 10) double conductivity,
      @Argument(symbol = "B'", unit = "m", min = 0.05, max = 500) double dimensionM,
      @Argument(symbol = "d_t", unit = "m", min = 0.001, max = 100) double floorThicknessM,
      @Argument(symbol = "z", unit = "m", min = 0, max = 20) double depthM) {
    double thickness = floorThicknessM + depthM / 2;
    return thickness < dimensionM
        ? 2
            * conductivity
            / (FastMath.PI * dimensionM + thickness)
            * FastMath.log(FastMath.PI * dimensionM / thickness + 1)
        : conductivity / (0.457 * dimensionM + thickness);
  }

  /** Steady transmittance of sunk walls. */
  @Formula(
      id = "digester.wall-transmittance",
      symbol = "U_bw",
      expression = "(2 lambda / (pi z)) (1 + 0.5 d_t / (d_t + z)) ln(z / d_w + 1)",
      unit = "W/(m2.K)",
      meaning = "Steady transmittance of walls below ground.",
      source = "iso-13370",
      equation = "12")
  public static double wallTransmittance(
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.01, max = 10) double conductivity,
      @Argument(symbol = "z", unit = "m", min = 0.01, max = 20) double depthM,
      @Argument(symbol = "d_t", unit = "m", min = 0.001, max = 100) double floorThicknessM,
      @Argument(symbol = "d_w", unit = "m", min = 0.001, max = 100) double wallThicknessM) {
    double thinner = Math.min(floorThicknessM, wallThicknessM);
    return 2
        * conductivity
        / (FastMath.PI * depthM)
        * (1 + 0.5 * thinner / (thinner + depthM))
        * FastMath.log(depthM / wallThicknessM + 1);
  }

  /** Depth to which the year's wave reaches. */
  @Formula(
      id = "digester.periodic-penetration-depth",
      symbol = "delta",
      expression = "sqrt(3.15e7 lambda / (pi rho c))",
      unit = "m",
      meaning = "Depth to which the year's temperature wave reaches.",
      source = "iso-13370",
      equation = "annex, periodic penetration depth")
  public static double penetrationDepthM(
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.01, max = 10) double conductivity,
      @Argument(symbol = "rho c", unit = "J/(m3.K)", min = 1e5, max = 1e7) double heatCapacity) {
    return Math.sqrt(3.15e7 * conductivity / (FastMath.PI * heatCapacity));
  }

  /**
   * Steady loss of the wetted floor and walls of a sunk tank by the standard, W/K.
   *
   * @param liquidDepthM height of wall that liquor wets
   * @param floorDepthM from ground surface to floor
   * @param wallThicknessM thickness of the walls at the ground surface
   * @param resistance of walls and floor with the outer surface, m2.K/W
   */
  static double heatedBasementWK(
      double floorAreaM2,
      double perimeterM,
      double liquidDepthM,
      double floorDepthM,
      double wallThicknessM,
      double resistance,
      double conductivity) {
    double floor = equivalentThicknessM(wallThicknessM, conductivity, resistance);
    double wall = conductivity * resistance;
    double dimension = characteristicDimensionM(floorAreaM2, perimeterM);
    return floorAreaM2 * floorTransmittance(conductivity, dimension, floor, floorDepthM)
        + perimeterM * liquidDepthM * wallTransmittance(conductivity, floorDepthM, floor, wall);
  }
}
