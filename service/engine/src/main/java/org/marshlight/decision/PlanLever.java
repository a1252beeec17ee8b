package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.marshlight.economy.CapitalDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.Plan;

/**
 * One quantity of a plan that can be moved.
 *
 * @param lever which
 * @param unit UCUM code
 * @param spoken the unit in words
 * @param now the quantity as it stands
 * @param low least quantity to try
 * @param high greatest quantity to try
 * @param whole whether it counts things
 * @param charge what another amount costs more, as far as the plan gives its cost; null where it
 *     costs something that the plan gives no cost of
 * @param at the plan with another amount
 */
record PlanLever(
    Lever lever,
    String unit,
    String spoken,
    double now,
    double low,
    double high,
    boolean whole,
    DoubleUnaryOperator charge,
    DoubleFunction<Plan> at) {

  /** A change whose cost the plan itself bears, or that costs nothing. */
  private static final DoubleUnaryOperator NOTHING = amount -> 0;

  private static final String FEED_SPOKEN = "kg a day";
  private static final double LEAST_GLASS_M2 = 0.5;
  private static final double LEAST_RESISTANCE = 0.02;
  private static final double MOST_RESISTANCE = 10;
  private static final double LEAST_VOLUME_M3 = 0.5;
  private static final double MOST_VOLUME_M3 = 500;
  private static final double MOST_PEOPLE = 40;
  private static final double MOST_FEED_KG = 300;

  /** Quantities are tried up to this many times what they are. */
  private static final double MANY_TIMES = 20;

  private static final double PRICE_TO_START_FROM = 0.1;

  /** Whether the tank itself would have to be built otherwise. */
  boolean changesTank() {
    return lever == Lever.RETENTION || lever == Lever.INSULATION;
  }

  /** The lever on a plan; null where the plan has nothing that it could move. */
  static PlanLever of(Lever lever, Plan plan, Sizes sizes, CoefficientSet set) {
    return switch (lever) {
      case PEOPLE -> people(plan, set);
      case FEED -> feed(plan);
      case GLASS -> sizes.glazed() ? glass(plan, sizes) : null;
      case INSULATION -> sizes.tank() == null ? null : insulation(plan, sizes);
      case PRICE -> price(plan);
      case RETENTION -> sizes.tank() == null ? null : retention(plan, sizes);
    };
  }

  private static PlanLever people(Plan plan, CoefficientSet set) {
    if (plan.people() == null) {
      return null;
    }
    double now =
        plan.people().count() == null ? set.value("feed.default.people") : plan.people().count();
    return new PlanLever(
        Lever.PEOPLE,
        "1",
        "",
        now,
        Math.min(now, 1),
        Math.max(MOST_PEOPLE, 2 * now),
        true,
        NOTHING,
        count -> changed(plan, "people", changed(plan.people(), "count", (int) Math.rint(count))));
  }

  private static PlanLever feed(Plan plan) {
    if (plan.tank() == null) {
      return null;
    }
    List<FeedDesign> feeds = plan.feeds() == null ? List.of() : plan.feeds();
    double now = feeds.stream().mapToDouble(FeedDesign::freshKgPerDay).sum();
    if (now <= 0) {
      return new PlanLever(
          Lever.FEED,
          "kg/d",
          FEED_SPOKEN,
          0,
          0,
          MOST_FEED_KG,
          false,
          NOTHING,
          kg -> changed(plan, "feeds", List.of(FeedDesign.of(PlanInstead.SCRAPS, kg))));
    }
    return new PlanLever(
        Lever.FEED,
        "kg/d",
        FEED_SPOKEN,
        now,
        0,
        Math.max(MOST_FEED_KG, 2 * now),
        false,
        NOTHING,
        kg -> {
          List<FeedDesign> scaled = new ArrayList<>();
          for (FeedDesign feed : feeds) {
            scaled.add(changed(feed, "freshKgPerDay", feed.freshKgPerDay() * kg / now));
          }
          return changed(plan, "feeds", List.copyOf(scaled));
        });
  }

  private static PlanLever glass(Plan plan, Sizes sizes) {
    double now = sizes.glassM2();
    return new PlanLever(
        Lever.GLASS,
        "m2",
        "m2",
        now,
        Math.min(now, LEAST_GLASS_M2),
        Math.min(500, Math.max(now, 4 * sizes.geometry().planAreaM2())),
        false,
        NOTHING,
        m2 ->
            changed(
                coverCosting(plan, m2 / now), "cover", changed(plan.cover(), "apertureM2", m2)));
  }

  /** The cost of the cover grows with its area. */
  private static Plan coverCosting(Plan plan, double factor) {
    MoneyDesign money = plan.money();
    if (money == null || money.capital() == null || money.capital().cover() == null) {
      return plan;
    }
    CapitalDesign capital = changed(money.capital(), "cover", money.capital().cover() * factor);
    return changed(plan, "money", changed(money, "capital", capital));
  }

  private static PlanLever insulation(Plan plan, Sizes sizes) {
    return new PlanLever(
        Lever.INSULATION,
        "m2.K/W",
        "m2 K/W",
        sizes.tank().wallResistanceM2KW(),
        Math.min(LEAST_RESISTANCE, sizes.tank().wallResistanceM2KW()),
        MOST_RESISTANCE,
        false,
        null,
        resistance ->
            changed(plan, "tank", changed(plan.tank(), "wallResistanceM2KW", resistance)));
  }

  private static PlanLever price(Plan plan) {
    if (plan.money() == null || plan.money().capital() == null) {
      return null;
    }
    double now = plan.money().fuelPricePerKWh() == null ? 0 : plan.money().fuelPricePerKWh();
    return new PlanLever(
        Lever.PRICE,
        "1/(kW.h)",
        MoneyReasons.currency(plan.money()) + " a kWh",
        now,
        0,
        MANY_TIMES * Math.max(now, PRICE_TO_START_FROM),
        false,
        NOTHING,
        price -> changed(plan, "money", atPrice(plan.money(), price)));
  }

  /** Electricity has one price, also where it is the displaced fuel. */
  private static MoneyDesign atPrice(MoneyDesign money, double price) {
    MoneyDesign priced = changed(money, "fuelPricePerKWh", price);
    return HeatSource.ELECTRICITY.equals(money.displacedFuel())
        ? changed(priced, "electricityPricePerKWh", price)
        : priced;
  }

  private static PlanLever retention(Plan plan, Sizes sizes) {
    double now = sizes.tank().liquidVolumeM3();
    return new PlanLever(
        Lever.RETENTION,
        "m3",
        "m3 of tank",
        now,
        Math.min(now, LEAST_VOLUME_M3),
        Math.min(MOST_VOLUME_M3, 10 * now),
        false,
        tankCharge(plan, now),
        volume -> changed(plan, "tank", changed(plan.tank(), "liquidVolumeM3", volume)));
  }

  /**
   * The cost of the tank grows with its volume. A smaller one is not credited to the part that is
   * judged: what it spares could be spared without that part.
   */
  private static DoubleUnaryOperator tankCharge(Plan plan, double now) {
    Double cost =
        plan.money() == null || plan.money().capital() == null
            ? null
            : plan.money().capital().tank();
    if (cost == null) {
      return null;
    }
    return volume -> Math.max(0, cost * (volume / now - 1));
  }
}
