package org.marshlight.compost;

import org.marshlight.evidence.Coefficient;

/** Numbers of the public rules on heat and storage; meaning and unit stand in the book. */
record HygieneRules(
    @Coefficient("compost.rule-warm-days") double warmDays,
    @Coefficient("compost.rule-hot-hours") double hotHours,
    @Coefficient("compost.rule-hot-days") double hotDays,
    @Coefficient("compost.rule-turnings") double turnings,
    @Coefficient("compost.storage-temperate") double storageTemperateDays,
    @Coefficient("compost.storage-warm") double storageWarmDays,
    @Coefficient("compost.storage-warm-from") double storageWarmFromC) {

  private static final double HOURS_PER_DAY = 24;

  /** Significant reduction: warm for days, and hot for some hours of them. */
  boolean significant(HeapCourse course) {
    return course.above40Days() >= warmDays && course.above55Days() > hotHours / HOURS_PER_DAY;
  }

  /** Further reduction in heaps: hot for days, and turned. */
  boolean further(HeapCourse course, double turned) {
    return course.above55Days() >= hotDays && turned >= turnings;
  }

  /** Storage that is wanting where heat is not shown, in a climate of such a mean, days. */
  double storageDays(double meanC) {
    return meanC > storageWarmFromC ? storageWarmDays : storageTemperateDays;
  }
}
