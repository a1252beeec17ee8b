package org.marshlight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.statistics.Sample;
import org.marshlight.statistics.SobolIndices;
import org.marshlight.statistics.SobolRuns;

/** Estimates which uncertain numbers carry the variance of figures. */
final class Sensitivity implements PreparedStudy<SensitivityStudy> {

  private static final int RESAMPLES = 200;

  private final Settings<SensitivityRequest> settings;
  private final Figures figures;
  private final DrawSpace space;
  private final StudyCost cost;

  private Sensitivity(
      Settings<SensitivityRequest> settings, Figures figures, DrawSpace space, StudyCost cost) {
    this.settings = settings;
    this.figures = figures;
    this.space = space;
    this.cost = cost;
  }

  static Sensitivity of(Settings<SensitivityRequest> settings) {
    SensitivityRequest request = settings.request();
    BaseRun base = BaseRun.of(request.plan());
    Figures figures =
        request.outputs() == null
            ? Figures.key(base.outcome())
            : Figures.of(request.outputs(), base.outcome(), "/outputs");
    List<Fault> faults = new ArrayList<>();
    if (figures.verdicts()) {
      faults.add(Fault.of("study.verdicts-have-no-variance", "/outputs", "verdicts", "figures"));
    }
    DrawSpace space =
        DrawSpace.of(base, figures, Settings.each(request.vary()), request.climate(), faults);
    if (faults.isEmpty() && space.factors().isEmpty()) {
      faults.add(Fault.of("study.nothing-uncertain", "/vary", null, "a number that varies"));
    }
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new Sensitivity(settings, figures, space, cost(request, figures, space));
  }

  /** Runs of the chain that the screening takes; none where there is no need of it. */
  private static long screening(SensitivityRequest request, Figures figures, DrawSpace space) {
    int factors = space.factors().size();
    return factors > Screening.KEPT
        ? (long) Screening.runs(request.trajectories(), factors) * figures.runsEach()
        : 0;
  }

  private static StudyCost cost(SensitivityRequest request, Figures figures, DrawSpace space) {
    int factors = space.factors().size();
    long screening = screening(request, figures, space);
    int kept = Math.min(Screening.KEPT, factors);
    long eachPoint = (long) (kept + 2) * figures.runsEach();
    StudyCost cost = StudyCost.of(screening + request.points() * eachPoint);
    long fits = (StudyCost.MOST - screening) / eachPoint;
    cost.within(
        fits >= 16 ? "/points" : "/trajectories",
        fits >= 16 ? request.points() : request.trajectories(),
        fits >= 16
            ? Long.highestOneBit(fits) + " points"
            : "fewer trajectories or figures of the stages alone");
    return cost;
  }

  @Override
  public String costliestField() {
    return screening(settings.request(), figures, space) > cost.chainRuns() / 2
        ? "/trajectories"
        : "/points";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  @Override
  public Studied<SensitivityStudy> run(Workbench bench) {
    SensitivityRequest request = settings.request();
    DrawSpace kept = space;
    SensitivityStudy.Screening told = null;
    if (space.factors().size() > Screening.KEPT) {
      Screening.Result screened =
          new Screening(space, figures, request.trajectories(), request.seed())
              .run(request.trajectories(), bench);
      kept = screened.kept();
      told = screened.told();
    }
    int inputs = kept.factors().size();
    SobolRuns runs = SobolRuns.of(request.points(), inputs, request.seed());
    List<double[]> values = values(runs, kept, bench);
    List<SensitivityStudy.FigureIndices> indices = new ArrayList<>();
    for (int i = 0; i < figures.list().size(); i++) {
      int place = i;
      double[] of = values.stream().mapToDouble(run -> run[place]).toArray();
      indices.add(indices(figures.list().get(i), of, kept));
    }
    int without = withoutAnswer(values, inputs);
    SensitivityStudy study =
        new SensitivityStudy(
            cost,
            request.points(),
            request.seed(),
            space.factors().size(),
            told,
            without,
            List.copyOf(indices));
    List<Notice> notices = DrawNotices.of(request.climate(), without, request.points());
    return new Studied<>(study, settings.assumptions(), notices, List.of());
  }

  /**
   * All runs of one point are done in a row, so that they share their weather where it is the same.
   */
  private List<double[]> values(SobolRuns runs, DrawSpace kept, Workbench bench) {
    int width = kept.factors().size() + 2;
    List<List<double[]>> rows =
        bench.each(runs.a().length, 1, row -> row(runs, row * width, width, kept));
    return rows.stream().flatMap(List::stream).toList();
  }

  private List<double[]> row(SobolRuns runs, int first, int width, DrawSpace kept) {
    List<double[]> row = new ArrayList<>(width);
    Sites sites = new Sites(kept.base());
    for (int i = first; i < first + width; i++) {
      Outcome outcome = kept.run(runs.point(i), sites);
      double[] values = new double[figures.list().size()];
      Arrays.fill(values, Double.NaN);
      row.add(outcome == null ? values : figures.values(outcome));
    }
    return row;
  }

  private SensitivityStudy.FigureIndices indices(Figure figure, double[] values, DrawSpace kept) {
    int inputs = kept.factors().size();
    SobolIndices indices = SobolIndices.of(values, inputs);
    Sample sample = Sample.of(values);
    boolean varies = sample.size() > 0 && !Double.isNaN(indices.total()[0]);
    List<SensitivityStudy.Index> each = new ArrayList<>();
    if (varies) {
      SobolIndices.Intervals ends =
          SobolIndices.intervals(values, inputs, RESAMPLES, settings.request().seed());
      for (int input = 0; input < inputs; input++) {
        each.add(
            new SensitivityStudy.Index(
                kept.factors().get(input).id(),
                indices.first()[input],
                ends.firstLow()[input],
                ends.firstHigh()[input],
                indices.total()[input],
                ends.totalLow()[input],
                ends.totalHigh()[input]));
      }
      each.sort(Comparator.comparingDouble(index -> -index.total()));
    }
    return new SensitivityStudy.FigureIndices(
        figure.name(),
        figure.pointer(),
        figure.unit(),
        figure.meaning(),
        sample.size() == 0 ? null : (Double) sample.deviation(),
        varies ? (Double) Arrays.stream(indices.first()).sum() : null,
        List.copyOf(each));
  }

  /** Points of which some run has no figure at all. */
  private static int withoutAnswer(List<double[]> values, int inputs) {
    int without = 0;
    for (int from = 0; from < values.size(); from += inputs + 2) {
      boolean missing =
          values.subList(from, from + inputs + 2).stream()
              .anyMatch(run -> Arrays.stream(run).allMatch(Double::isNaN));
      without += missing ? 1 : 0;
    }
    return without;
  }
}
