package org.marshlight.loop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.marshlight.climate.ClimateYear;
import org.marshlight.compost.CompostOutcome;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropOutcome;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.DigesterOutcome;
import org.marshlight.ethanol.EthanolOutcome;
import org.marshlight.ethanol.StillDesign;
import org.marshlight.feed.Account;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandOutcome;

/**
 * What a plan's chain came to. Stages that were not run are null.
 *
 * @param year weather of the site
 * @param digester the tank
 * @param wetland the beds
 * @param crop what grew on them
 * @param ethanol fuel alcohol
 * @param still the still with its defaults filled; null without fuel
 * @param compost the heap
 * @param soakedGreywater greywater that meets neither tank nor bed; null if there is none
 * @param givenEffluent water that the plan gives in place of a tank; null without
 * @param otherAccounts books of processes that belong to no stage
 * @param defaults what was filled
 * @param coefficientsRead lists the coefficients that the run rests on
 * @param notices remarks of site and loop
 * @param passes passes of the chain until returned streams stood still
 * @param working works the steps of each stage that was run
 */
public record LoopRun(
    ClimateYear year,
    DigesterOutcome digester,
    WetlandOutcome<CropGrowth> wetland,
    CropOutcome crop,
    EthanolOutcome ethanol,
    StillDesign still,
    CompostOutcome compost,
    WaterStream soakedGreywater,
    WaterStream givenEffluent,
    List<Account> otherAccounts,
    List<Assumption> defaults,
    Supplier<List<Assumption>> coefficientsRead,
    List<Notice> notices,
    int passes,
    Supplier<List<StageWorking>> working) {

  /** Books of every process that was run, in the order of the flow. */
  public List<Account> accounts() {
    List<Account> accounts = new ArrayList<>();
    if (digester != null) {
      accounts.addAll(digester.accounts());
    }
    accounts.addAll(otherAccounts);
    if (wetland != null) {
      accounts.addAll(wetland.accounts());
    }
    if (ethanol != null) {
      accounts.add(ethanol.account());
    }
    if (compost != null) {
      accounts.add(compost.account());
    }
    return List.copyOf(accounts);
  }

  /** Everything taken as given: defaults first, then coefficients. */
  public List<Assumption> assumptions() {
    List<Assumption> all = new ArrayList<>(defaults);
    all.addAll(coefficientsRead.get());
    return List.copyOf(all);
  }

  /** Remarks of site, loop and every stage that was run. */
  public List<Notice> allNotices() {
    List<Notice> all = new ArrayList<>(notices);
    if (digester != null) {
      all.addAll(digester.notices());
    }
    if (wetland != null) {
      all.addAll(wetland.notices());
    }
    if (crop != null) {
      all.addAll(crop.notices());
    }
    if (ethanol != null) {
      all.addAll(ethanol.notices());
    }
    if (compost != null) {
      all.addAll(compost.notices());
    }
    return List.copyOf(all);
  }

  /** What crossed the borders of the loop, of the tank's heat and of the gas store. */
  public List<Balance> balances() {
    List<Balance> balances = new ArrayList<>(ledger().balances());
    if (digester != null) {
      balances.add(heatBalance(digester.estimate()));
      DigesterOutcome.GasEnergy gas = digester.gasEnergy();
      balances.add(
          Balance.of(
              "energy",
              "gas",
              "kW.h",
              gas.inKWh(),
              gas.usedKWh() + gas.surplusKWh(),
              gas.storedKWh()));
    }
    return List.copyOf(balances);
  }

  private static Balance heatBalance(DigesterEstimate digester) {
    DigesterEstimate.HeatFlows flows = digester.heatFlowsKWh();
    double in = 0;
    double out = 0;
    for (List<Double> flow :
        List.of(
            flows.absorbedSun(),
            flows.topToAir(),
            flows.topToSky(),
            flows.enclosure(),
            flows.coverSoil(),
            flows.ground(),
            flows.inflow(),
            flows.burnedGas())) {
      for (double month : flow) {
        in += Math.max(0, month);
        out += Math.max(0, -month);
      }
    }
    double stored = digester.storedHeatChangeKWh().stream().mapToDouble(Double::doubleValue).sum();
    return Balance.of("energy", "tank-heat", "kW.h", in, out, stored);
  }

  /** Every flow of matter. */
  public List<Flow> flows() {
    return ledger().flows();
  }

  /** How closed the loop is. */
  public List<Closure> closure() {
    return ledger().closure();
  }

  private Ledger ledger() {
    return new Ledger(accounts(), ofHumanOrigin());
  }

  /** Processes to which the plan has brought matter of human origin from outside. */
  private Set<String> ofHumanOrigin() {
    Set<String> processes = new HashSet<>();
    if (wetland != null) {
      wetland.accounts().stream()
          .filter(LoopRun::receivesGiven)
          .forEach(account -> processes.add(account.process()));
    }
    if (ethanol != null && ethanol.humanOrigin()) {
      processes.add(ethanol.account().process());
    }
    if (compost != null && compost.estimate().hygiene().humanOrigin()) {
      processes.add(compost.account().process());
    }
    return processes;
  }

  private static boolean receivesGiven(Account account) {
    return account.received().stream().anyMatch(e -> e.party().equals(GivenStreams.PARTY));
  }
}
