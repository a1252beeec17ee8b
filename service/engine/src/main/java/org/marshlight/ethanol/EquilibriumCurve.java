package org.marshlight.ethanol;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.marshlight.evidence.DataFile;

/**
 * The equilibrium curve of ethanol and water at one atmosphere, worked once and read many times by
 * the stills: van Laar's curve, moved onto the seventeen measured points by a spline through what
 * it misses at each. The last plates below the azeotrope are so close together that a miss of 0.01
 * in the vapour is a plate in ten.
 *
 * <p>Between its own points the curve is straight; they lie closest where it bends most, so that
 * this adds less than 1e-6.
 */
final class EquilibriumCurve {

  private static final int INTERVALS = 2000;

  /** The azeotrope lies between these mole fractions. */
  private static final double BELOW_AZEOTROPE = 0.85;

  private static final double ABOVE_AZEOTROPE = 0.95;

  /** The curve at {@link EthanolWaterEquilibrium#STANDARD_KPA}. */
  static final EquilibriumCurve STANDARD = new EquilibriumCurve();

  private final double[] liquid = new double[INTERVALS + 1];
  private final double[] vapour = new double[INTERVALS + 1];
  private final double azeotrope;

  private EquilibriumCurve() {
    UnivariateFunction missed = missed();
    for (int i = 0; i <= INTERVALS; i++) {
      double root = (double) i / INTERVALS;
      liquid[i] = root * root;
      vapour[i] = vanLaar(liquid[i]) + missed.value(liquid[i]);
    }
    azeotrope = Root.of(x -> vapour(x) - x, BELOW_AZEOTROPE, ABOVE_AZEOTROPE);
  }

  /** Mole fraction of ethanol in the vapour over a boiling liquid. */
  double vapour(double moleFraction) {
    int lower = Math.min(INTERVALS - 1, (int) (Math.sqrt(moleFraction) * INTERVALS));
    double share = (moleFraction - liquid[lower]) / (liquid[lower + 1] - liquid[lower]);
    return vapour[lower] + share * (vapour[lower + 1] - vapour[lower]);
  }

  /** Mole fraction of ethanol in the liquid under a vapour. */
  double liquid(double vapourFraction) {
    int found = Arrays.binarySearch(vapour, vapourFraction);
    if (found >= 0) {
      return liquid[found];
    }
    int upper = Math.min(INTERVALS, Math.max(1, -found - 1));
    double share = (vapourFraction - vapour[upper - 1]) / (vapour[upper] - vapour[upper - 1]);
    return liquid[upper - 1] + share * (liquid[upper] - liquid[upper - 1]);
  }

  /** Mole fraction at which vapour and liquid are alike. */
  double azeotrope() {
    return azeotrope;
  }

  /** Measured vapour less van Laar's, as a function of the liquid. */
  private static UnivariateFunction missed() {
    List<CSVRecord> points = DataFile.rows(EquilibriumCurve.class, "equilibrium-points.csv");
    double[] x = new double[points.size()];
    double[] difference = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = Double.parseDouble(points.get(i).get("x"));
      difference[i] = Double.parseDouble(points.get(i).get("y")) - vanLaar(x[i]);
    }
    return new AkimaSplineInterpolator().interpolate(x, difference);
  }

  private static double vanLaar(double moleFraction) {
    return EthanolWaterEquilibrium.vapourFraction(
        moleFraction, EthanolWaterEquilibrium.STANDARD_KPA);
  }
}
