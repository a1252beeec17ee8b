package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;

/**
 * Sizes of a tank that follow from its design.
 *
 * @param liquidM3 liquid volume
 * @param liquidDepthM depth of the liquid
 * @param planAreaM2 area of floor, liquid surface and lid
 * @param perimeterM perimeter of the floor
 * @param lengthM longer side of the plan, or the diameter
 * @param widthM shorter side of the plan, or the diameter
 * @param floorDepthM from ground surface to the floor
 */
public record TankGeometry(
    double liquidM3,
    double liquidDepthM,
    double planAreaM2,
    double perimeterM,
    double lengthM,
    double widthM,
    double floorDepthM) {

  /** Length over width of a rectangular tank whose length is not given. */
  private static final double USUAL_LENGTH_OVER_WIDTH = 2;

  /**
   * Sizes of a tank whose defaults are filled.
   *
   * @param gasSpaceM height of the gas space over the liquor
   */
  public static TankGeometry of(TankDesign tank, double gasSpaceM) {
    double area = tank.liquidVolumeM3() / tank.liquidDepthM();
    double floorDepth = tank.burialDepthM() + gasSpaceM + tank.liquidDepthM();
    if (tank.shape() == TankShape.CYLINDRICAL) {
      double diameter = Math.sqrt(4 * area / FastMath.PI);
      return new TankGeometry(
          tank.liquidVolumeM3(),
          tank.liquidDepthM(),
          area,
          FastMath.PI * diameter,
          diameter,
          diameter,
          floorDepth);
    }
    double length =
        tank.lengthM() == null ? Math.sqrt(USUAL_LENGTH_OVER_WIDTH * area) : tank.lengthM();
    double width = area / length;
    return new TankGeometry(
        tank.liquidVolumeM3(),
        tank.liquidDepthM(),
        area,
        2 * (length + width),
        length,
        width,
        floorDepth);
  }
}
