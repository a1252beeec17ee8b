package org.marshlight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Worth;

/** Draws everything uncertain about a plan and tells how its figures spread. */
final class Uncertainty implements PreparedStudy<UncertaintyStudy> {

  private final Settings<UncertaintyRequest> settings;
  private final BaseRun base;
  private final Figures figures;
  private final DrawSpace space;
  private final Ties ties;
  private final StudyCost cost;

  private Uncertainty(
      Settings<UncertaintyRequest> settings,
      BaseRun base,
      Figures figures,
      DrawSpace space,
      Ties ties,
      StudyCost cost) {
    this.settings = settings;
    this.base = base;
    this.figures = figures;
    this.space = space;
    this.ties = ties;
    this.cost = cost;
  }

  static Uncertainty of(Settings<UncertaintyRequest> settings) {
    UncertaintyRequest request = settings.request();
    BaseRun base = BaseRun.of(request.plan());
    Figures figures =
        request.outputs() == null
            ? Figures.annual(base.outcome())
            : Figures.of(request.outputs(), base.outcome(), "/outputs");
    StudyCost cost = StudyCost.of((long) request.draws() * figures.runsEach());
    cost.within(
        "/draws",
        request.draws(),
        "at most " + StudyCost.MOST / figures.runsEach() + " draws with these outputs");
    List<Fault> faults = new ArrayList<>();
    DrawSpace space =
        DrawSpace.of(base, figures, Settings.each(request.vary()), request.climate(), faults);
    Ties ties = Ties.of(request.correlations(), space, faults);
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new Uncertainty(settings, base, figures, space, ties, cost);
  }

  @Override
  public String costliestField() {
    return "/draws";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  @Override
  public Studied<UncertaintyStudy> run(Workbench bench) {
    UncertaintyRequest request = settings.request();
    Draws draws = Draws.of(request.draws(), request.seed(), space, ties, figures, bench);
    UncertaintyStudy study =
        new UncertaintyStudy(
            cost,
            request.draws(),
            request.seed(),
            space.factors().size(),
            draws.withoutAnswer(),
            spreads(draws),
            figures.verdicts() ? odds(draws) : List.of());
    List<Notice> notices =
        DrawNotices.of(request.climate(), draws.withoutAnswer(), request.draws());
    return new Studied<>(study, settings.assumptions(), notices, List.of());
  }

  private List<UncertaintyStudy.FigureSpread> spreads(Draws draws) {
    DrawnSpread.Maker maker = new DrawnSpread.Maker();
    ModelErrors errors = ModelErrors.of(base.set(), draws.points(), space.factors().size());
    List<UncertaintyStudy.FigureSpread> spreads = new ArrayList<>();
    for (int i = 0; i < figures.list().size(); i++) {
      Figure figure = figures.list().get(i);
      double central = figure.value(base.outcome());
      double[] values = draws.values(i);
      boolean error = figure.error() != StageError.NONE && !Double.isNaN(central);
      double[] centrals = new double[values.length];
      Arrays.fill(centrals, central);
      spreads.add(
          new UncertaintyStudy.FigureSpread(
              figure.name(),
              figure.pointer(),
              figure.unit(),
              figure.meaning(),
              Double.isNaN(central) ? null : (Double) central,
              (int) Arrays.stream(values).filter(Double::isNaN).count() - draws.withoutAnswer(),
              maker.of(figure.unit(), values),
              error ? maker.of(figure.unit(), errors.measured(figure, centrals)) : null,
              error ? maker.of(figure.unit(), errors.measured(figure, values)) : null));
    }
    return List.copyOf(spreads);
  }

  private List<UncertaintyStudy.VerdictOdds> odds(Draws draws) {
    List<UncertaintyStudy.VerdictOdds> odds = new ArrayList<>();
    for (Verdict verdict : base.outcome().verdicts()) {
      Judged judged = Judged.of(verdict);
      List<Worth> answers =
          draws.each().stream()
              .map(draw -> draw.verdicts().get(judged))
              .filter(answer -> answer != null)
              .toList();
      double yes = share(answers, Worth.YES);
      odds.add(
          new UncertaintyStudy.VerdictOdds(
              judged.component(),
              judged.bed(),
              verdict.answer(),
              yes,
              answers.isEmpty() ? 0 : Math.sqrt(yes * (1 - yes) / answers.size()),
              share(answers, Worth.MARGINAL),
              share(answers, Worth.NO)));
    }
    return List.copyOf(odds);
  }

  private static double share(List<Worth> answers, Worth sought) {
    return answers.isEmpty()
        ? 0
        : (double) answers.stream().filter(sought::equals).count() / answers.size();
  }
}
