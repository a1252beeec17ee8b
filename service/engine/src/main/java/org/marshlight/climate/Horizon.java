package org.marshlight.climate;

import java.util.Arrays;
import org.apache.commons.math3.util.FastMath;

/**
 * What stands before the sun, as one height for each sector of the compass.
 *
 * @param heightRad height of each sector, clockwise, the first about true north; empty if nothing
 *     stands there
 */
record Horizon(double[] heightRad) {

  @Override
  public boolean equals(Object other) {
    return other instanceof Horizon horizon && Arrays.equals(heightRad, horizon.heightRad);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(heightRad);
  }

  boolean free() {
    return heightRad.length == 0;
  }

  /** Whether the sun stands above the horizon of its sector. */
  boolean shows(double latitudeRad, double declinationRad, double hourAngleRad, double cosZenith) {
    if (free()) {
      return true;
    }
    double sinZenith = Math.sqrt(Math.max(1e-12, 1 - cosZenith * cosZenith));
    double cosFromSouth =
        (cosZenith * FastMath.sin(latitudeRad) - FastMath.sin(declinationRad))
            / (sinZenith * FastMath.cos(latitudeRad));
    double fromSouth = FastMath.acos(Math.max(-1, Math.min(1, cosFromSouth)));
    double fromNorth = FastMath.PI + (hourAngleRad >= 0 ? fromSouth : -fromSouth);
    double sectors = heightRad.length;
    int sector = (int) Math.floor(fromNorth / (2 * FastMath.PI) * sectors + 0.5);
    double height = heightRad[Math.floorMod(sector, heightRad.length)];
    return FastMath.asin(Math.max(-1, Math.min(1, cosZenith))) > height;
  }

  /** Share of an even sky that a horizontal plane still sees. */
  double skyShare() {
    if (free()) {
      return 1;
    }
    double sum = 0;
    for (double height : heightRad) {
      double cosine = FastMath.cos(height);
      sum += cosine * cosine;
    }
    return sum / heightRad.length;
  }
}
