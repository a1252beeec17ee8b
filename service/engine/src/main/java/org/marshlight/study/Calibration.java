package org.marshlight.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.Stage;
import org.marshlight.statistics.LeastSquaresFit;
import org.marshlight.statistics.Sample;
import org.marshlight.study.CalibrationStudy.ComparedMonth;
import org.marshlight.study.CalibrationStudy.Fitted;
import org.marshlight.study.CalibrationStudy.Place;

/** Holds a tank that was built to its plan, and fits coefficients to it. */
final class Calibration implements PreparedStudy<CalibrationStudy> {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /** Standard uncertainties by which a reading must lie beyond the band to be outside of it. */
  private static final double BEYOND = 1.645;

  private final Settings<CalibrationRequest> settings;
  private final BaseRun base;
  private final List<Reading> readings;
  private final List<CoefficientRow> fit;
  private final StudyCost cost;

  private Calibration(
      Settings<CalibrationRequest> settings,
      BaseRun base,
      List<Reading> readings,
      List<CoefficientRow> fit,
      StudyCost cost) {
    this.settings = settings;
    this.base = base;
    this.readings = readings;
    this.fit = fit;
    this.cost = cost;
  }

  static Calibration of(Settings<CalibrationRequest> settings) {
    CalibrationRequest request = settings.request();
    List<Fault> faults = new ArrayList<>();
    for (Fault fault : PlanCheck.faults(request.plan(), Stage.DIGESTER)) {
      faults.add(fault.under("/plan"));
    }
    List<Reading> readings = Readings.of(request, faults);
    List<CoefficientRow> fit = coefficients(request.fit(), faults);
    if (faults.isEmpty() && !fit.isEmpty() && readings.size() <= fit.size()) {
      faults.add(
          Fault.of(
              "study.too-few-readings",
              "/fit",
              fit.size(),
              "at most " + (readings.size() - 1) + " coefficients with these readings",
              "readings",
              readings.size(),
              "coefficients",
              fit.size()));
    }
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    long fitting = fitting(fit);
    StudyCost cost = StudyCost.of(fitting + request.draws());
    cost.within("/draws", request.draws(), "at most " + (StudyCost.MOST - fitting) + " draws");
    return new Calibration(settings, BaseRun.of(request.plan()), readings, fit, cost);
  }

  /** Runs of the chain that the fit of some coefficients takes at the most. */
  private static long fitting(List<CoefficientRow> fit) {
    return fit.isEmpty()
        ? 0
        : (long) (TankFit.MOST_EVALUATIONS + 2) * (2 * fit.size() + 1) * fit.size();
  }

  private static List<CoefficientRow> coefficients(List<String> ids, List<Fault> faults) {
    List<CoefficientRow> rows = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (int i = 0; ids != null && i < ids.size(); i++) {
      CoefficientRow row = CoefficientBook.standard().find(ids.get(i)).orElse(null);
      String at = Pointer.child("/fit", i);
      if (row == null) {
        faults.add(PlanCheck.unknownCoefficient(at, ids.get(i)));
      } else if (!seen.add(ids.get(i))) {
        faults.add(Fault.of("study.fitted-twice", at, ids.get(i), "another coefficient"));
      } else {
        rows.add(row);
      }
    }
    return List.copyOf(rows);
  }

  @Override
  public String costliestField() {
    return fitting(fit) > settings.request().draws() ? "/fit" : "/draws";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  @Override
  public Studied<CalibrationStudy> run(Workbench bench) {
    List<Notice> notices = new ArrayList<>();
    List<Fitted> fitted = List.of();
    Plan plan = base.plan();
    if (!fit.isEmpty()) {
      TankFit tank = new TankFit(base, fit, readings);
      LeastSquaresFit.Result result = tank.fit(bench);
      fitted = tank.told(result);
      notices.addAll(tank.notices(result, fitted));
      plan = withFitted(plan, fitted);
    }
    BaseRun now = fitted.isEmpty() ? base : BaseRun.of(plan);
    List<ComparedMonth> months = months(now, bench);
    double squares = 0;
    for (ComparedMonth month : months) {
      double off = month.residual() / month.uncertainty();
      squares += off * off;
    }
    CalibrationStudy study =
        new CalibrationStudy(
            cost,
            fitted,
            squares / (readings.size() - fit.size()),
            months,
            (int) months.stream().filter(month -> month.place() != Place.INSIDE).count(),
            LikelyCauses.of(months),
            plan);
    return new Studied<>(
        study,
        settings.assumptions(),
        notices,
        List.of(new Studied.Considered(plan, now.outcome().estimate())));
  }

  private static Plan withFitted(Plan plan, List<Fitted> fitted) {
    Map<String, Double> overrides =
        new TreeMap<>(plan.coefficients() == null ? Map.of() : plan.coefficients());
    fitted.forEach(one -> overrides.put(one.id(), one.value()));
    return RecordShape.changed(plan, "coefficients", Collections.unmodifiableMap(overrides));
  }

  /** Each reading against the model and against the band of draws. */
  private List<ComparedMonth> months(BaseRun now, Workbench bench) {
    double[] modelled =
        TankFit.modelled(now.plan(), LoopModel.coefficients(now.plan()), new Sites(now), readings);
    List<String> pointers =
        readings.stream()
            .map(reading -> Pointer.child(reading.kind().pointer(), reading.month() - 1))
            .toList();
    Figures figures = Figures.of(pointers, now.outcome(), "/readings");
    DrawSpace space = DrawSpace.of(now, figures, List.of(), null, new ArrayList<>());
    Draws draws =
        Draws.of(
            settings.request().draws(),
            settings.request().seed(),
            space,
            Ties.of(null, space, new ArrayList<>()),
            figures,
            bench);
    ModelErrors errors = ModelErrors.of(now.set(), draws.points(), space.factors().size());
    List<ComparedMonth> months = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Figure figure = figures.list().get(i);
      Sample sample = Sample.of(errors.measured(figure, draws.values(i)));
      months.add(month(readings.get(i), modelled[i], sample));
    }
    return List.copyOf(months);
  }

  private static ComparedMonth month(Reading reading, double modelled, Sample sample) {
    double p5 = sample.percentile(LOW);
    double p95 = sample.percentile(HIGH);
    double beyond = BEYOND * reading.uncertainty();
    Place place = Place.INSIDE;
    if (reading.value() < p5 - beyond) {
      place = Place.BELOW;
    } else if (reading.value() > p95 + beyond) {
      place = Place.ABOVE;
    }
    return new ComparedMonth(
        reading.kind(),
        reading.month(),
        reading.kind().unit(),
        reading.value(),
        reading.uncertainty(),
        modelled,
        reading.value() - modelled,
        p5,
        p95,
        place);
  }
}
