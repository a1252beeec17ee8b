package org.marshlight.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.crop.CropEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.WetlandEstimate;

/** The year's work and watch-points of a plan. */
final class YearlyCalendar {

  private static final List<Integer> ALL = Seasons.where(month -> true);
  private static final List<Integer> QUARTERS = List.of(3, 6, 9, 12);

  private final Seasons seasons;
  private final LoopRun run;
  private final Sizes sizes;
  private final List<CalendarEntry> entries = new ArrayList<>();

  private YearlyCalendar(Seasons seasons, Sizes sizes) {
    this.seasons = seasons;
    this.run = seasons.run();
    this.sizes = sizes;
  }

  /** Entries in the order of their first month. */
  static List<CalendarEntry> of(Plan plan, LoopRun run, Sizes sizes) {
    YearlyCalendar calendar = new YearlyCalendar(new Seasons(plan, run), sizes);
    calendar.tank();
    calendar.gas();
    calendar.beds();
    calendar.stillAndHeap();
    calendar.entries.sort(Comparator.comparing(entry -> entry.months().get(0)));
    return List.copyOf(calendar.entries);
  }

  private void add(String name, List<Integer> months, Object... params) {
    if (!months.isEmpty()) {
      entries.add(CalendarEntry.of("decision.calendar-" + name, months, params));
    }
  }

  private void tank() {
    if (sizes.tank() == null) {
      return;
    }
    DigesterEstimate tank = run.digester().estimate();
    add(
        "desludge",
        List.of(sizes.tank().desludgingMonth()),
        "years",
        tank.sludge().intervalYears(),
        "volumeM3",
        tank.sludge().greatestVolumeM3());
    add("lid", QUARTERS);
    add("feed", seasons.feeding());
    if (sizes.quilted()) {
      add("cover-at-night", ALL);
    }
    if (sizes.glazed()) {
      double mean = Months.mean(Months.array(tank.monthly().lidTemperatureC()));
      add(
          "shade-glass",
          Seasons.where(
              month ->
                  tank.annual().lidAboveScaldHours() > 0
                      && tank.monthly().lidTemperatureC().get(month) > mean),
          "highestC",
          tank.annual().highestLidTemperatureC(),
          "hours",
          tank.annual().lidAboveScaldHours());
    }
  }

  private void gas() {
    if (sizes.gas() == null || run.digester() == null) {
      return;
    }
    DigesterEstimate tank = run.digester().estimate();
    add("traps-and-relief", ALL);
    add("frost", seasons.frost());
    List<Double> met = tank.monthly().cookingDemandMetFraction();
    if (tank.annual().cookingDemandMetFraction() != null) {
      int worst = 0;
      for (int month = 1; month < Months.COUNT; month++) {
        if (met.get(month) != null && (met.get(worst) == null || met.get(month) < met.get(worst))) {
          worst = month;
        }
      }
      add("least-gas", List.of(worst + 1), "metPercent", 100 * met.get(worst));
    }
    if (sizes.gas().monthsOff() != null) {
      add("gas-off", sizes.gas().monthsOff().stream().sorted().distinct().toList());
    }
  }

  private void beds() {
    if (run.crop() == null) {
      return;
    }
    add("bed-care", seasons.growing());
    for (CropEstimate.Bed bed : run.crop().estimate().beds()) {
      if (bed.storageOrganDryKg() > 0) {
        add(
            "harvest",
            List.of(bed.harvestMonth()),
            "bed",
            bed.name(),
            "plant",
            bed.plant(),
            "freshKg",
            bed.storageOrganFreshKg());
      } else if (bed.topsDryKg() > 0) {
        add("cut-tops", List.of(bed.harvestMonth()), "bed", bed.name(), "plant", bed.plant());
      }
    }
    WetlandEstimate beds = run.wetland().estimate();
    add(
        "no-water-use",
        Seasons.where(
            month -> beds.fitness().monthly().get(month) == WetlandEstimate.UseAnswer.UNFIT));
    add(
        "dry-beds",
        beds.withoutOutflow().stream().map(WetlandEstimate.NoOutflow::month).sorted().toList());
  }

  private void stillAndHeap() {
    if (run.ethanol() != null && run.ethanol().estimate().annual().ethanolL() > 0) {
      add(
          "mash",
          List.of(seasons.mashing()),
          "ethanolL",
          run.ethanol().estimate().annual().ethanolL());
    }
    if (run.compost() != null) {
      add(
          "build-heap",
          List.of(seasons.buildingHeap()),
          "volumeM3",
          run.compost().estimate().mix().volumeM3());
      add("turn-heap", seasons.turning(run.compost().estimate()));
      add(
          "spread",
          List.of(seasons.spring()),
          "finishedKg",
          run.compost().estimate().annual().finishedKg(),
          "storageDays",
          run.compost().estimate().hygiene().storageWantingDays());
    }
  }
}
