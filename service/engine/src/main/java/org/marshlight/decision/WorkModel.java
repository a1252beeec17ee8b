package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.crop.CropEstimate;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;

/** Reckons the hours that a plan asks for, task by task. */
final class WorkModel {

  private static final double LITRES_PER_HECTOLITRE = 100;

  private final Sizes sizes;
  private final Seasons seasons;
  private final LoopRun run;
  private final WorkCoefficients c;
  private final List<WorkEstimate.Task> tasks = new ArrayList<>();

  private WorkModel(Sizes sizes, Seasons seasons, WorkCoefficients c) {
    this.sizes = sizes;
    this.seasons = seasons;
    this.run = seasons.run();
    this.c = c;
  }

  /**
   * The work of a plan.
   *
   * @param netEnergyKWh useful energy of gas and net energy of alcohol in a year
   * @param hourValue worth of an hour; null if none is set
   */
  static WorkEstimate of(
      Plan plan,
      LoopRun run,
      Sizes sizes,
      double netEnergyKWh,
      Double hourValue,
      WorkCoefficients c) {
    WorkModel work = new WorkModel(sizes, new Seasons(plan, run), c);
    work.tank();
    work.beds();
    work.still();
    work.heap();
    return work.estimate(netEnergyKWh, hourValue);
  }

  private WorkEstimate estimate(double netEnergyKWh, Double hourValue) {
    double[] monthly = new double[Months.COUNT];
    for (WorkEstimate.Task task : tasks) {
      for (int month = 0; month < Months.COUNT; month++) {
        monthly[month] += task.monthlyHours().get(month);
      }
    }
    double hours = Months.sum(monthly);
    return new WorkEstimate(
        List.copyOf(tasks),
        hours,
        Months.list(monthly),
        hours > 0 ? netEnergyKWh / hours : null,
        hourValue == null ? null : hourValue * hours);
  }

  private void tank() {
    if (sizes.tank() == null) {
      return;
    }
    every("tank-checks", null, c.tankHoursPerMonth());
    int years = (int) Math.max(1, Math.rint(sizes.tank().desludgingIntervalYears()));
    once("desludging", null, sizes.tank().desludgingMonth(), c.desludgingHours() / years);
    double[] feeding = new double[Months.COUNT];
    for (int month : seasons.feeding()) {
      feeding[month - 1] = Months.days(month - 1) * c.feedingHoursPerDay();
    }
    add("feeding", Component.CO_FEEDING, feeding);
    if (sizes.gas() != null) {
      every("gas-checks", Component.GAS_CAPTURE, c.gasHoursPerMonth());
    }
    if (sizes.glazed()) {
      every("glass", Component.GLASS, c.glassHoursPerMonth());
    }
    if (sizes.quilted()) {
      double[] quilt = new double[Months.COUNT];
      for (int month = 0; month < Months.COUNT; month++) {
        quilt[month] = Months.days(month) * c.quiltHoursPerDay();
      }
      add("quilt", Component.NIGHT_INSULATION, quilt);
    }
  }

  private void beds() {
    if (run.crop() == null) {
      return;
    }
    double area = sizes.beds().stream().mapToDouble(bed -> bed.areaM2()).sum();
    double[] care = new double[Months.COUNT];
    for (int month : seasons.growing()) {
      care[month - 1] = area * c.bedHoursPerM2Month();
    }
    add("bed-care", Component.BEDS, care);
    double[] harvest = new double[Months.COUNT];
    double[] cutting = new double[Months.COUNT];
    for (CropEstimate.Bed bed : run.crop().estimate().beds()) {
      double cut = bed.areaM2() * bed.harvestedFraction();
      int month = bed.harvestMonth() - 1;
      harvest[month] += bed.storageOrganDryKg() > 0 ? cut * c.harvestHoursPerM2() : 0;
      cutting[month] += bed.topsDryKg() > 0 ? cut * c.cuttingHoursPerM2() : 0;
    }
    add("harvest", Component.BEDS, harvest);
    add("cutting-tops", Component.BEDS, cutting);
  }

  private void still() {
    if (run.ethanol() != null) {
      once(
          "mashing",
          Component.FUEL_ALCOHOL,
          seasons.mashing(),
          run.ethanol().estimate().stillage().volumeL()
              / LITRES_PER_HECTOLITRE
              * c.mashingHoursPerHectolitre());
    }
  }

  private void heap() {
    if (run.compost() == null) {
      return;
    }
    CompostEstimate compost = run.compost().estimate();
    double volume = compost.mix().volumeM3();
    once(
        "building-heap",
        Component.COMPOST,
        seasons.buildingHeap(),
        volume * c.buildingHoursPerM3());
    List<Integer> turnings = seasons.turning(compost);
    double[] turning = new double[Months.COUNT];
    for (int month : turnings) {
      turning[month - 1] +=
          compost.hygiene().turnings() / turnings.size() * volume * c.turningHoursPerM3();
    }
    add("turning-heap", Component.COMPOST, turning);
    once(
        "spreading",
        Component.COMPOST,
        seasons.spring(),
        compost.finished().volumeM3() * c.spreadingHoursPerM3());
  }

  private void every(String name, Component component, double hours) {
    add(name, component, Months.constant(hours));
  }

  private void once(String name, Component component, int month, double hours) {
    double[] monthly = new double[Months.COUNT];
    monthly[month - 1] = hours;
    add(name, component, monthly);
  }

  private void add(String name, Component component, double[] monthly) {
    double sum = Months.sum(monthly);
    if (sum > 0) {
      String code = "decision.work-" + name;
      tasks.add(
          new WorkEstimate.Task(
              code, Sentences.text(code, Params.of()), component, sum, Months.list(monthly)));
    }
  }
}
