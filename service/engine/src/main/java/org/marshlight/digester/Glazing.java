package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.TiltedYear;

/** Sun that the lid takes up under glass, hour by hour. */
final class Glazing {

  /** Steps of the table of transmittance against the cosine of the angle of incidence. */
  private static final int STEPS = 200;

  private final double[] beamByCosine = new double[STEPS + 1];
  private final double skyDiffuse;
  private final double groundDiffuse;

  private Glazing(CoverDesign cover, HeatCoefficients coefficients) {
    for (int step = 0; step <= STEPS; step++) {
      beamByCosine[step] = step == 0 ? 0 : through((double) step / STEPS, cover, coefficients);
    }
    skyDiffuse =
        through(cosDeg(GlazingOptics.skyDiffuseAngleDeg(cover.tiltDeg())), cover, coefficients);
    double groundAngle = GlazingOptics.groundDiffuseAngleDeg(cover.tiltDeg());
    groundDiffuse = groundAngle >= 89.9 ? 0 : through(cosDeg(groundAngle), cover, coefficients);
  }

  private static double cosDeg(double angleDeg) {
    return FastMath.cos(FastMath.toRadians(angleDeg));
  }

  static Glazing of(CoverDesign cover, HeatCoefficients coefficients) {
    return new Glazing(cover, coefficients);
  }

  /** Share of beam at normal incidence that the lid takes up. */
  double atNormalIncidence() {
    return beamByCosine[STEPS];
  }

  /** Sun taken up by the lid for each m2 of glass, W/m2. */
  double[] absorbedWM2(TiltedYear sun) {
    double[] absorbed = new double[ClimateYear.HOURS];
    for (int hour = 0; hour < absorbed.length; hour++) {
      absorbed[hour] =
          sun.beamWM2()[hour] * beam(sun.cosIncidence()[hour])
              + sun.skyWM2()[hour] * skyDiffuse
              + sun.groundWM2()[hour] * groundDiffuse;
    }
    return absorbed;
  }

  private double beam(double cosine) {
    double place = cosine * STEPS;
    int below = Math.min(STEPS - 1, (int) place);
    double share = place - below;
    return beamByCosine[below] * (1 - share) + beamByCosine[below + 1] * share;
  }

  private static double through(
      double cosOutside, CoverDesign cover, HeatCoefficients coefficients) {
    double index = coefficients.glassIndex();
    double cosInside = GlazingOptics.cosInside(cosOutside, index);
    double depth = coefficients.glassExtinction() * coefficients.glassThickness() * cover.layers();
    return GlazingOptics.transmittanceAbsorptance(
        GlazingOptics.reflectionTransmittance(cosOutside, cosInside, index, cover.layers()),
        GlazingOptics.absorptionTransmittance(depth, cosInside),
        cover.absorptance());
  }
}
