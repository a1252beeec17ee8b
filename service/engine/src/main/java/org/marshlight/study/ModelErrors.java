package org.marshlight.study;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Distribution;
import org.marshlight.statistics.Spread;
import org.marshlight.statistics.SpreadFit;

/** The models' own errors, drawn stage by stage. One that a plan sets itself is not drawn. */
final class ModelErrors {

  /** Coordinates that the errors take of each point. */
  static final int DIMENSION = StageError.values().length - 1;

  private final Map<StageError, double[]> drawn = new EnumMap<>(StageError.class);

  private ModelErrors() {}

  /**
   * Errors of draws.
   *
   * @param set coefficients of the plan as it is
   * @param points a point for each draw
   * @param first coordinate of the first error in each
   */
  static ModelErrors of(CoefficientSet set, double[][] points, int first) {
    ModelErrors errors = new ModelErrors();
    for (StageError stage : StageError.values()) {
      if (stage != StageError.NONE) {
        int coordinate = first + stage.ordinal() - 1;
        errors.drawn.put(stage, draws(stage, set, points, coordinate));
      }
    }
    return errors;
  }

  private static double[] draws(
      StageError stage, CoefficientSet set, double[][] points, int coordinate) {
    CoefficientRow row = CoefficientBook.standard().find(stage.coefficient()).orElseThrow();
    double[] values = new double[points.length];
    if (set.isOverridden(row.id()) || row.distribution() == Distribution.FIXED) {
      Arrays.fill(values, set.value(row.id()));
      return values;
    }
    Spread spread = SpreadFit.of(row);
    for (int draw = 0; draw < values.length; draw++) {
      values[draw] = spread.quantile(points[draw][coordinate]);
    }
    return values;
  }

  /**
   * A figure of each draw as it would be measured.
   *
   * @param figure the figure; one with a model error
   * @param modelled what each draw gives
   */
  double[] measured(Figure figure, double[] modelled) {
    double[] discrepancies = drawn.get(figure.error());
    double[] measured = new double[modelled.length];
    for (int draw = 0; draw < measured.length; draw++) {
      double value = figure.error().measured(modelled[draw], discrepancies[draw]);
      measured[draw] =
          Double.isNaN(value) ? value : Math.max(figure.low(), Math.min(figure.high(), value));
    }
    return measured;
  }
}
