package org.marshlight.loop;

import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.feed.Waste;

/**
 * How much a plan sends to its tank, before anything is run.
 *
 * @param plan a plan whose fields are legal one by one
 * @param set coefficients of the plan
 */
record LoadEstimate(Plan plan, CoefficientSet set) {

  /** Fresh mass on a day of the fullest month, kg. */
  double freshKgOnFullestDay() {
    List<Waste> wastes = wastes();
    double most = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      double day = 0;
      for (Waste waste : wastes) {
        day += waste.perDay().get(month).freshKg();
      }
      most = Math.max(most, day);
    }
    return most;
  }

  /** Fresh mass of a year, kg. */
  double freshKgPerYear() {
    return wastes().stream().mapToDouble(waste -> waste.annual().freshKg()).sum();
  }

  private List<Waste> wastes() {
    PeopleDesign people =
        plan.people() == null ? null : new Defaults(set).fill(plan.people(), "/people");
    return LoadModel.toTank(people, plan.feeds(), set);
  }
}
