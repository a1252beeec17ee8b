package org.marshlight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.marshlight.statistics.MorrisRuns;
import org.marshlight.statistics.Sample;

/** Finds the uncertain numbers that are worth a closer look, by elementary effects. */
final class Screening {

  /** Numbers that are kept for the closer look. */
  static final int KEPT = 20;

  private static final int TOLD = 60;
  private static final int IN_A_ROW = 16;

  private final DrawSpace space;
  private final Figures figures;
  private final MorrisRuns runs;

  Screening(DrawSpace space, Figures figures, int trajectories, int seed) {
    this.space = space;
    this.figures = figures;
    this.runs = MorrisRuns.of(trajectories, space.factors().size(), seed);
  }

  /** Runs that a screening takes. */
  static long runs(int trajectories, int factors) {
    return (long) trajectories * (factors + 1);
  }

  /** Runs the screening. */
  Result run(int trajectories, Workbench bench) {
    int parts = (runs.runs() + IN_A_ROW - 1) / IN_A_ROW;
    List<double[]> values =
        bench.each(parts, 1, this::part).stream().flatMap(List::stream).toList();
    double[] strengths = new double[space.factors().size()];
    int[] strongestOn = new int[strengths.length];
    for (int figure = 0; figure < figures.list().size(); figure++) {
      int place = figure;
      double[] of = values.stream().mapToDouble(run -> run[place]).toArray();
      Sample sample = Sample.of(of);
      double deviation = sample.size() == 0 ? 0 : sample.deviation();
      double[] effects = runs.meanAbsoluteEffects(of);
      for (int factor = 0; factor < strengths.length && deviation > 0; factor++) {
        double strength = effects[factor] / deviation;
        if (strength > strengths[factor]) {
          strengths[factor] = strength;
          strongestOn[factor] = figure;
        }
      }
    }
    return result(strengths, strongestOn, trajectories);
  }

  /** Runs that stand together mostly differ in one number, and share their weather. */
  private List<double[]> part(int part) {
    Sites sites = new Sites(space.base());
    List<double[]> values = new ArrayList<>();
    for (int i = part * IN_A_ROW; i < Math.min(runs.runs(), (part + 1) * IN_A_ROW); i++) {
      values.add(values(space.run(runs.points()[i], sites)));
    }
    return values;
  }

  private double[] values(Outcome outcome) {
    if (outcome != null) {
      return figures.values(outcome);
    }
    double[] none = new double[figures.list().size()];
    Arrays.fill(none, Double.NaN);
    return none;
  }

  private Result result(double[] strengths, int[] strongestOn, int trajectories) {
    List<Integer> order =
        IntStream.range(0, strengths.length)
            .boxed()
            .sorted(Comparator.comparingDouble(factor -> -strengths[factor]))
            .toList();
    List<Factor> kept = new ArrayList<>();
    List<SensitivityStudy.Effect> effects = new ArrayList<>();
    for (int rank = 0; rank < Math.min(TOLD, order.size()); rank++) {
      int place = order.get(rank);
      Factor factor = space.factors().get(place);
      if (rank < KEPT) {
        kept.add(factor);
      }
      effects.add(
          new SensitivityStudy.Effect(
              factor.id(),
              factor.meaning(),
              figures.list().get(strongestOn[place]).name(),
              strengths[place],
              rank < KEPT));
    }
    double weakest = strengths[order.get(Math.min(KEPT, order.size()) - 1)];
    return new Result(
        space.only(kept),
        new SensitivityStudy.Screening(trajectories, weakest, List.copyOf(effects)));
  }

  /**
   * What a screening came to.
   *
   * @param kept the space of the numbers kept
   * @param told what is told of it
   */
  record Result(DrawSpace kept, SensitivityStudy.Screening told) {}
}
