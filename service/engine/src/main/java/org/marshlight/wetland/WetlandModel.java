package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;

/** A year of the beds: water, removal, what the stands take of it, and what leaves. */
public final class WetlandModel {

  /** Name of the three-way valve before the beds, a process of its own where there is one. */
  public static final String VALVE = "valve";

  private WetlandModel() {}

  /**
   * What is known of the beds before they are run; designs have their defaults filled.
   *
   * @param beds at least one bed, in the order of the flow
   * @param use what the outflow is for
   * @param diversion valve past the beds; null if there is none
   * @param intakes at least one stream that comes to them
   * @param climate the site
   * @param stands what grows on each bed
   * @param destinations where what leaves goes
   * @param <G> what stands tell of their growth
   */
  public record Inputs<G extends StandGrowth>(
      List<BedDesign> beds,
      WaterUse use,
      DiversionDesign diversion,
      List<Intake> intakes,
      SiteClimate climate,
      List<? extends Stand<G>> stands,
      Destinations destinations) {}

  /**
   * Name of the process that whatever feeds the beds gives to.
   *
   * @param diversion valve past the beds; null if there is none
   */
  public static String inlet(DiversionDesign diversion) {
    return diversion == null ? Party.bed(0) : VALVE;
  }

  /** Runs the beds to their steady year. */
  public static <G extends StandGrowth> WetlandOutcome<G> run(
      Inputs<G> inputs, CoefficientSet set) {
    List<BedSite> beds = sites(inputs.beds(), set);
    WaterStream whole = Intake.mixed(inputs.intakes());
    UseFitness fitness = new UseFitness(inputs.use(), set);
    SizingCoefficients sizing = set.bind(SizingCoefficients.class);
    boolean[] diverted = DivertedMonths.given(inputs.diversion(), beds.get(0), inputs.climate());
    BedChain<G> chain = chain(inputs, beds, whole, diverted);
    while (DivertedMonths.more(inputs.diversion(), chain, fitness, sizing, diverted)) {
      chain = chain(inputs, beds, whole, diverted);
    }
    List<Account> accounts = accounts(inputs, chain, whole, diverted);
    WaterStream toSoil = Intake.in(whole, diverted, true);
    WetlandEstimate estimate =
        new WetlandReport(
                chain,
                inputs.climate(),
                fitness,
                whole,
                inputs.diversion() == null ? null : toSoil,
                diverted,
                set)
            .estimate();
    List<Notice> notices = WetlandNotices.of(chain, inputs.climate(), estimate);
    return new WetlandOutcome<>(
        estimate,
        chain.inflow(),
        chain.outflow(),
        toSoil,
        accounts,
        chain.years().stream().map(BedYear::growth).toList(),
        notices);
  }

  /**
   * The steps of the first bed in the month of coldest water, for a reader to redo by hand.
   *
   * @param inputs the beds as they are run
   * @param set the coefficients
   */
  public static <G extends StandGrowth> List<Step> working(Inputs<G> inputs, CoefficientSet set) {
    List<BedSite> beds = sites(inputs.beds(), set);
    WaterStream whole = Intake.mixed(inputs.intakes());
    boolean[] diverted = DivertedMonths.given(inputs.diversion(), beds.get(0), inputs.climate());
    BedChain<G> chain = chain(inputs, beds, whole, diverted);
    return WetlandWorking.steps(
        chain.years().get(0),
        inputs.climate(),
        inputs.stands().get(0),
        set.bind(SizingCoefficients.class));
  }

  private static List<BedSite> sites(List<BedDesign> designs, CoefficientSet set) {
    List<BedSite> beds = new ArrayList<>();
    for (int i = 0; i < designs.size(); i++) {
      beds.add(BedSite.of(i, designs.get(i), set));
    }
    return List.copyOf(beds);
  }

  private static <G extends StandGrowth> BedChain<G> chain(
      Inputs<G> inputs, List<BedSite> beds, WaterStream whole, boolean[] diverted) {
    WaterStream inflow = inputs.diversion() == null ? whole : Intake.in(whole, diverted, false);
    return BedChain.of(beds, inflow, inputs.stands(), inputs.climate());
  }

  private static <G extends StandGrowth> List<Account> accounts(
      Inputs<G> inputs, BedChain<G> chain, WaterStream whole, boolean[] diverted) {
    Map<String, Matter> received = Intake.byParty(inputs.intakes());
    List<Account> accounts = new ArrayList<>();
    if (inputs.diversion() != null) {
      Account.Books valve = Account.of(VALVE);
      received.forEach(valve::received);
      Matter onward = chain.inflow().annual();
      accounts.add(
          valve
              .gave(Party.bed(0), onward)
              .gave(Party.SOIL, Intake.in(whole, diverted, true).annual())
              .close());
      received = new LinkedHashMap<>();
      received.put(VALVE, onward);
    }
    accounts.addAll(chain.accounts(received, inputs.destinations()));
    return List.copyOf(accounts);
  }

  /** Months of the year marked, 1 = January. */
  static List<Integer> months(boolean[] marked) {
    List<Integer> months = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (marked[month]) {
        months.add(month + 1);
      }
    }
    return List.copyOf(months);
  }
}
