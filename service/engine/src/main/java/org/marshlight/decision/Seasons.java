package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.Months;
import org.marshlight.crop.CropEstimate;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;

/**
 * When in the year things are done; months from 1 = January.
 *
 * @param plan the plan
 * @param run its chain
 */
record Seasons(Plan plan, LoopRun run) {

  private static final int SPRING_NORTH = 4;
  private static final int SPRING_SOUTH = 10;
  private static final int AUTUMN_NORTH = 10;
  private static final int AUTUMN_SOUTH = 4;

  /** Mean air temperature from which plants grow, Cel. */
  private static final double GROWING_C = 5;

  private boolean north() {
    return run.year().site().latitudeRad() >= 0;
  }

  /** Months that fulfil something; 0 = January is handed in. */
  static List<Integer> where(IntPredicate holds) {
    List<Integer> months = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (holds.test(month)) {
        months.add(month + 1);
      }
    }
    return List.copyOf(months);
  }

  /** A month so many after another. */
  static int after(int month, int by) {
    return (month - 1 + by) % Months.COUNT + 1;
  }

  List<Integer> frost() {
    return where(month -> run.year().site().airC()[month] < 0);
  }

  List<Integer> growing() {
    return where(month -> run.year().site().airC()[month] >= GROWING_C);
  }

  List<Integer> feeding() {
    return where(
        month ->
            plan.feeds() != null
                && plan.feeds().stream()
                    .anyMatch(
                        feed -> feed.freshKgPerDay() > 0 && Months.includes(feed.months(), month)));
  }

  int spring() {
    return north() ? SPRING_NORTH : SPRING_SOUTH;
  }

  /** The month of the last harvest, or autumn where nothing is harvested. */
  int lastHarvest() {
    if (run.crop() != null) {
      List<CropEstimate.Bed> beds = run.crop().estimate().beds();
      for (int i = beds.size() - 1; i >= 0; i--) {
        if (beds.get(i).storageOrganDryKg() > 0) {
          return beds.get(i).harvestMonth();
        }
      }
    }
    return north() ? AUTUMN_NORTH : AUTUMN_SOUTH;
  }

  int mashing() {
    return after(lastHarvest(), 1);
  }

  int buildingHeap() {
    return run.ethanol() == null ? lastHarvest() : mashing();
  }

  /** A turning a month from the month after building on. */
  List<Integer> turning(CompostEstimate compost) {
    int turnings = (int) Math.min(Months.COUNT, Math.ceil(compost.hygiene().turnings()));
    List<Integer> months = new ArrayList<>();
    for (int i = 1; i <= turnings; i++) {
      months.add(after(buildingHeap(), i));
    }
    months.sort(Integer::compare);
    return List.copyOf(months);
  }
}
