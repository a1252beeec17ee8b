package org.marshlight.digester;

import static org.marshlight.digester.WeatheredSurface.KELVIN;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.TiltedYear;

/**
 * A lid under a sloped plane of one or two panes, with insulated back and sides, and a quilt over
 * the glass from sunset to sunrise. The wedge between lid and glass is taken as a gap of its mean
 * height at half the glass's tilt. Sun through glass that does not fit over the lid is lost.
 */
final class GlazedTop extends Top {

  /** Hollands' correlation ends at 75 deg. */
  private static final double STEEPEST_RAD = 1.3;

  private final ClimateYear year;
  private final WeatheredSurface surface;
  private final TiltedYear sun;
  private final double[] absorbedWM2;
  private final double collectingM2;
  private final double perLidM2;
  private final double perGlassM2;
  private final double glassPerLid;
  private final AirGap lidGap;
  private final AirGap paneGap;
  private final double lidFactor;
  private final double paneFactor;
  private final boolean twoPanes;
  private final double nightM2KW;

  private double innerPaneC;
  private double lidToPaneM2KW;
  private double paneToPaneM2KW;
  private int hour;

  GlazedTop(
      ClimateYear year, CoverDesign cover, TankGeometry geometry, HeatCoefficients coefficients) {
    this.year = year;
    double tilt = FastMath.toRadians(cover.tiltDeg());
    double glassM2 = cover.apertureM2();
    double slopeM = glassM2 / geometry.lengthM();
    double backM = slopeM * FastMath.sin(tilt);
    double endsM2 = backM * slopeM * FastMath.cos(tilt);
    collectingM2 = cover.collectingM2(geometry.planAreaM2());
    perLidM2 = 1 / geometry.planAreaM2();
    perGlassM2 = 1 / glassM2;
    glassPerLid = glassM2 * perLidM2;
    lidGap = new AirGap(coefficients.leastGlassGap() + backM / 2, Math.min(STEEPEST_RAD, tilt / 2));
    lidFactor =
        CoverHeatTransfer.emittanceFactor(
            coefficients.lidEmittance(), coefficients.glassEmittance());
    paneFactor =
        CoverHeatTransfer.emittanceFactor(
            coefficients.glassEmittance(), coefficients.glassEmittance());
    paneGap = new AirGap(coefficients.paneGap(), Math.min(STEEPEST_RAD, tilt));
    twoPanes = cover.layers() > 1;
    nightM2KW = cover.nightResistanceM2KW();
    sideConductanceWK = (backM * geometry.lengthM() + endsM2) / cover.enclosureResistanceM2KW();
    surface = new WeatheredSurface(year, coefficients, glassM2, (1 + FastMath.cos(tilt)) / 2);
    sun = year.tilted(cover.tiltDeg(), cover.azimuthDeg());
    absorbedWM2 = Glazing.of(cover, coefficients).absorbedWM2(sun);
    innerPaneC = surface.surfaceC();
    surfaceC = surface.surfaceC();
  }

  @Override
  void prepare(int stepHour, double lidC) {
    hour = stepHour;
    surface.prepare(hour);
    double lidToPane = across(lidGap, lidC, innerPaneC, lidFactor);
    double outsideM2KW = surface.resistanceM2KW();
    if (year.extraterrestrialWM2()[hour] <= 0) {
      outsideM2KW += nightM2KW;
    }
    environmentC = surface.environmentC();
    lidToPaneM2KW = 1 / lidToPane;
    if (twoPanes) {
      double paneToPane = across(paneGap, innerPaneC, surfaceC, paneFactor);
      paneToPaneM2KW = 1 / paneToPane;
      double both = lidToPane * paneToPane;
      conductanceWK =
          surface.areaM2() * both / (outsideM2KW * both + lidToPane + glassPerLid * paneToPane);
    } else {
      conductanceWK = surface.areaM2() * lidToPane / (outsideM2KW * lidToPane + glassPerLid);
    }
    lidSunW = absorbedWM2[hour] * collectingM2;
  }

  private static double across(AirGap gap, double belowC, double aboveC, double factor) {
    double below = belowC + KELVIN;
    double above = aboveC + KELVIN;
    return gap.convectionWM2K(below, above) + CoverHeatTransfer.longWave(below, above, factor);
  }

  @Override
  void settle(double lidC) {
    double upW = conductanceWK * (lidC - environmentC);
    double throughGlassWM2 = upW * perGlassM2;
    innerPaneC = lidC - upW * lidToPaneM2KW * perLidM2;
    surfaceC = twoPanes ? innerPaneC - throughGlassWM2 * paneToPaneM2KW : innerPaneC;
    surface.settle(environmentC + throughGlassWM2 * surface.resistanceM2KW());
  }

  @Override
  void book(double lidC, int month, HeatLedger ledger) {
    ledger.add(ledger.sunOnTop, month, sun.totalWM2(hour) * surface.areaM2());
    ledger.add(ledger.absorbedSun, month, lidSunW);
    ledger.add(ledger.enclosure, month, -sideConductanceWK * (lidC - surface.airC()));
    surface.book(month, ledger);
  }
}
