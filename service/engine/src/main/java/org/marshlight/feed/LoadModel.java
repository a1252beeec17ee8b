package org.marshlight.feed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;

/** What people and feeds bring, day by day. */
public final class LoadModel {

  private LoadModel() {}

  /**
   * The wastes that enter a tank.
   *
   * @param people the people, defaults filled; null if there are none
   * @param feeds wastes fed beside; null if there are none
   */
  public static List<Waste> toTank(
      PeopleDesign people, List<FeedDesign> feeds, CoefficientSet set) {
    List<Waste> wastes = new ArrayList<>();
    if (people != null && people.count() > 0) {
      wastes.add(personal("faeces", "toilet solids", people, set, flush(set)));
      wastes.add(personal("urine", "urine", people, set, Matter.NONE));
      if (people.wastewater() == Wastewater.ALL) {
        wastes.add(personal("greywater", "greywater", people, set, Matter.NONE));
      }
    }
    for (FeedDesign feed : feeds == null ? List.<FeedDesign>of() : feeds) {
      wastes.add(fed(feed, set));
    }
    return List.copyOf(wastes);
  }

  /** Greywater that does not enter the tank, on each day of each month. */
  public static List<Matter> greywaterBesideTank(PeopleDesign people, CoefficientSet set) {
    if (people == null || people.count() == 0 || people.wastewater() == Wastewater.ALL) {
      return Collections.nCopies(Months.COUNT, Matter.NONE);
    }
    return personal("greywater", "greywater", people, set, Matter.NONE).perDay();
  }

  /** Days that people are at home in a year, summed over the people. */
  public static double personDays(PeopleDesign people) {
    double days = 0;
    if (people != null) {
      for (int month = 0; month < Months.COUNT; month++) {
        days += people.count() * present(people, month) * Months.days(month);
      }
    }
    return days;
  }

  /**
   * A waste that the loop returns to the tank, spread evenly over the year.
   *
   * @param name what it is
   * @param from process that returns it
   * @param annual matter of a year
   * @param feed feed of the catalogue whose behaviour in a tank it shares
   */
  public static Waste returned(
      String name, String from, Matter annual, String feed, CoefficientSet set) {
    return new Waste(
        name,
        from,
        false,
        Collections.nCopies(Months.COUNT, annual.times(1.0 / Months.DAYS_PER_YEAR)),
        set.bind(FeedAnalysis.class, feed).digestibility());
  }

  private static Matter flush(CoefficientSet set) {
    return Matter.water(set.bind(FlushWater.class).waterKg());
  }

  private static Waste personal(
      String stream, String name, PeopleDesign people, CoefficientSet set, Matter with) {
    PersonalStream analysis = set.bind(PersonalStream.class, stream);
    Matter onePersonDay = analysis.matter().plus(with);
    List<Matter> perDay = new ArrayList<>(Months.COUNT);
    for (int month = 0; month < Months.COUNT; month++) {
      perDay.add(onePersonDay.times(people.count() * present(people, month)));
    }
    return new Waste(name, Party.PEOPLE, true, List.copyOf(perDay), analysis.digestibility());
  }

  private static double present(PeopleDesign people, int month) {
    return people.presentFraction() == null ? 1 : people.presentFraction().get(month);
  }

  private static Waste fed(FeedDesign feed, CoefficientSet set) {
    FeedAnalysis analysis = FeedAnalysis.of(feed, set);
    Matter onDay = analysis.matter(feed.freshKgPerDay());
    List<Matter> perDay = new ArrayList<>(Months.COUNT);
    for (int month = 0; month < Months.COUNT; month++) {
      perDay.add(Months.includes(feed.months(), month) ? onDay : Matter.NONE);
    }
    return new Waste(
        feed.feed(), Party.FEEDS, false, List.copyOf(perDay), analysis.digestibility());
  }

  /** Water that flushes the toilet, a person and day. */
  public record FlushWater(
      @org.marshlight.evidence.Coefficient("feed.flush.water") double waterKg) {}
}
