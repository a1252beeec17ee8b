package org.marshlight.study;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.statistics.SobolPoints;

/**
 * The draws of an uncertainty study: figures and verdicts of each.
 *
 * @param points the point of each draw
 * @param each what each came to, in order
 */
record Draws(double[][] points, List<Draw> each) {

  /**
   * One draw.
   *
   * @param values each figure; NaN where it has none
   * @param verdicts each verdict
   * @param answered whether the numbers drawn have an answer together
   */
  record Draw(double[] values, Map<Judged, Worth> verdicts, boolean answered) {}

  /**
   * Makes draws.
   *
   * @param count how many
   * @param seed their seed
   * @param space the uncertain numbers
   * @param ties how they go together
   * @param figures what is followed
   * @param bench where they are run
   */
  static Draws of(
      int count, int seed, DrawSpace space, Ties ties, Figures figures, Workbench bench) {
    double[][] points =
        SobolPoints.scrambled(count, space.factors().size() + ModelErrors.DIMENSION, seed);
    for (double[] point : points) {
      ties.tie(point);
    }
    return new Draws(
        points,
        bench.each(count, i -> draw(space.run(points[i], new Sites(space.base())), figures)));
  }

  private static Draw draw(Outcome outcome, Figures figures) {
    if (outcome == null) {
      double[] none = new double[figures.list().size()];
      Arrays.fill(none, Double.NaN);
      return new Draw(none, Map.of(), false);
    }
    Map<Judged, Worth> verdicts =
        figures.verdicts() ? Judged.answers(outcome.verdicts()) : Map.of();
    return new Draw(figures.values(outcome), verdicts, true);
  }

  /** A figure in each draw. */
  double[] values(int figure) {
    double[] values = new double[each.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = each.get(i).values()[figure];
    }
    return values;
  }

  int withoutAnswer() {
    return (int) each.stream().filter(draw -> !draw.answered()).count();
  }
}
