package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Notice;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;
import org.marshlight.statistics.LeastSquaresFit;
import org.marshlight.study.CalibrationStudy.Fitted;
import org.marshlight.study.CalibrationStudy.Told;

/** Fits coefficients to what was read at a tank. */
final class TankFit {

  /** Evaluations of the model with its slopes, at the most. */
  static final int MOST_EVALUATIONS = 40;

  private static final double CONFIDENCE = 0.95;

  /** Two coefficients this closely tied cannot be told apart. */
  private static final double TIED = 0.95;

  private final BaseRun base;
  private final List<CoefficientRow> rows;
  private final List<Reading> readings;
  private final int[] ordinals;

  TankFit(BaseRun base, List<CoefficientRow> rows, List<Reading> readings) {
    this.base = base;
    this.rows = rows;
    this.readings = readings;
    this.ordinals =
        rows.stream().mapToInt(row -> CoefficientBook.standard().ordinal(row.id())).toArray();
  }

  /** What the model gives for the readings, with some coefficients. */
  static double[] modelled(Plan plan, CoefficientSet set, Sites sites, List<Reading> readings) {
    DigesterEstimate estimate =
        LoopModel.run(plan, Stage.DIGESTER, sites.site(plan, set), set).digester().estimate();
    return readings.stream()
        .mapToDouble(reading -> reading.kind().modelled(estimate, reading.month()))
        .toArray();
  }

  /** Fits the coefficients. */
  LeastSquaresFit.Result fit(Workbench bench) {
    double[] measured = readings.stream().mapToDouble(Reading::value).toArray();
    double[] deviations = readings.stream().mapToDouble(Reading::uncertainty).toArray();
    double[] least = rows.stream().mapToDouble(CoefficientRow::least).toArray();
    double[] most = rows.stream().mapToDouble(CoefficientRow::most).toArray();
    double[] start = rows.stream().mapToDouble(row -> base.set().value(row.id())).toArray();
    return new LeastSquaresFit(
            sets -> bench.each(sets.size(), 1, i -> modelled(sets.get(i))),
            measured,
            deviations,
            least,
            most)
        .fit(start, MOST_EVALUATIONS);
  }

  private double[] modelled(double[] coefficients) {
    return modelled(
        base.plan(), base.set().drawn(ordinals, coefficients), new Sites(base), readings);
  }

  /** The fitted coefficients with their intervals. */
  List<Fitted> told(LeastSquaresFit.Result fit) {
    double freedom = readings.size() - rows.size();
    double scatter = FastMath.sqrt(Math.max(1, fit.squares() / freedom));
    double reach =
        new TDistribution(null, freedom).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
    List<Fitted> fitted = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      CoefficientRow row = rows.get(i);
      double half = reach * scatter * fit.deviation(i);
      boolean finite = half < row.most() - row.least();
      Told told;
      if (Double.isNaN(half)) {
        told = Told.AT_BOUND;
      } else if (!finite) {
        told = Told.NOT;
      } else {
        told = half < (row.high() - row.low()) / 2 ? Told.WELL : Told.WEAKLY;
      }
      fitted.add(
          new Fitted(
              row.id(),
              row.unit(),
              row.note(),
              fit.parameters()[i],
              base.set().value(row.id()),
              finite ? (Double) Math.max(row.least(), fit.parameters()[i] - half) : null,
              finite ? (Double) Math.min(row.most(), fit.parameters()[i] + half) : null,
              told));
    }
    return List.copyOf(fitted);
  }

  /** Warnings of a fit. */
  List<Notice> notices(LeastSquaresFit.Result fit, List<Fitted> fitted) {
    List<Notice> notices = new ArrayList<>();
    if (!fit.settled()) {
      notices.add(Notice.of("study.fit-not-settled", "evaluations", MOST_EVALUATIONS));
    }
    for (int i = 0; i < fitted.size(); i++) {
      Fitted one = fitted.get(i);
      switch (one.told()) {
        case NOT -> notices.add(Notice.of("study.not-identified", "coefficient", one.id()));
        case WEAKLY -> notices.add(Notice.of("study.weakly-identified", "coefficient", one.id()));
        case AT_BOUND ->
            notices.add(
                Notice.of("study.fitted-at-bound", "coefficient", one.id(), "value", one.value()));
        case WELL -> outsideOfBook(one, rows.get(i), notices);
      }
      for (int j = 0; j < i; j++) {
        if (Math.abs(fit.correlation(i, j)) > TIED) {
          notices.add(
              Notice.of("study.not-told-apart", "first", fitted.get(j).id(), "second", one.id()));
        }
      }
    }
    return notices;
  }

  private static void outsideOfBook(Fitted one, CoefficientRow row, List<Notice> notices) {
    if (one.value() < row.low() || one.value() > row.high()) {
      notices.add(
          Notice.of(
              "study.fitted-unusual",
              "coefficient",
              one.id(),
              "value",
              one.value(),
              "low",
              row.low(),
              "high",
              row.high()));
    }
  }
}
