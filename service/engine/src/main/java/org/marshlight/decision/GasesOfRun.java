package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.GasSurplus;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.loop.LoopRun;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.WetlandEstimate;

/** What a run of a plan gives off by itself, and what it spares elsewhere. */
final class GasesOfRun {

  /** Line of the fuel that cooking and hot water spare. */
  static final String SPARED_FUEL = "decision.gases-displaced-fuel";

  /** Line of the electricity that lamps and engines spare. */
  static final String SPARED_ELECTRICITY = "decision.gases-displaced-electricity";

  /** Methane for each kWh of net heating value, kg; from the sums of the run itself. */
  private static final double KG_PER_NM3 =
      Stoichiometry.METHANE / Stoichiometry.MOLAR_VOLUME_M3_KMOL;

  private final LoopRun run;
  private final CoefficientSet set;
  private final WarmingCoefficients c;

  private GasesOfRun(LoopRun run, CoefficientSet set) {
    this.run = run;
    this.set = set;
    this.c = set.bind(WarmingCoefficients.class);
  }

  /** Mass of methane of a volume at 0 Cel and 101.325 kPa. */
  static double methaneKg(double normalM3) {
    return normalM3 * KG_PER_NM3;
  }

  /** What the tank, the beds, the heap, the land and the still give off. */
  static List<Gases> givenOff(LoopRun run, CoefficientSet set) {
    GasesOfRun gases = new GasesOfRun(run, set);
    List<Gases> lines = new ArrayList<>();
    gases.tank(lines);
    gases.beds(lines);
    gases.land(lines);
    gases.heap(lines);
    gases.still(lines);
    lines.removeIf(Gases::none);
    return List.copyOf(lines);
  }

  /**
   * What the tank's delivered gas gives off where it is burned, flared or vented; part of {@link
   * #givenOff}.
   */
  static List<Gases> ofDelivered(LoopRun run, CoefficientSet set) {
    List<Gases> lines = new ArrayList<>();
    if (run.digester() != null) {
      new GasesOfRun(run, set).delivered(run.digester().estimate(), lines);
    }
    return lines;
  }

  private void tank(List<Gases> lines) {
    if (run.digester() == null) {
      return;
    }
    DigesterEstimate tank = run.digester().estimate();
    lines.add(Gases.methane("decision.gases-leak", methaneKg(tank.annual().methaneLeakedNm3())));
    lines.add(
        Gases.methane(
            "decision.gases-dissolved",
            methaneKg(tank.annual().methaneDissolvedNm3()) * c.dissolvedEscaping()));
    delivered(tank, lines);
  }

  private void delivered(DigesterEstimate tank, List<Gases> lines) {
    double energy = tank.annual().gasEnergyKWh();
    double perKWh = energy > 0 ? methaneKg(tank.annual().methaneNm3()) / energy : 0;
    double surplus = perKWh * Months.sum(Months.array(tank.monthly().gasSurplusKWh()));
    if (tank.gas().surplus() == GasSurplus.VENT) {
      lines.add(Gases.methane("decision.gases-vented", surplus));
    } else {
      lines.add(Gases.methane("decision.gases-flare", surplus * c.flareSlip()));
    }
    lines.add(
        Gases.methane(
            "decision.gases-burner", perKWh * tank.annual().gasUsedKWh() * c.burnerSlip()));
  }

  private void beds(List<Gases> lines) {
    if (run.wetland() == null) {
      return;
    }
    WetlandEstimate beds = run.wetland().estimate();
    lines.add(Gases.methane("decision.gases-stand", beds.annual().methaneKg()));
    double nitrousOxide = 0;
    for (WetlandEstimate.Bed bed : beds.beds()) {
      nitrousOxide +=
          Warming.nitrousOxideKg(
              bed.nitrogen().inflowKg(),
              bed.kind() == BedKind.FREE_WATER_SURFACE
                  ? c.openWaterNitrousOxide()
                  : c.gravelBedNitrousOxide());
    }
    lines.add(Gases.nitrousOxide("decision.gases-beds", nitrousOxide));
  }

  /** Nitrogen that reaches soil, water and land, whoever sends it. */
  private void land(List<Gases> lines) {
    double outflow = 0;
    double land = 0;
    for (Account account : run.accounts()) {
      for (Account.Entry entry : account.gave()) {
        switch (entry.party()) {
          case Party.SOIL, Party.WATER_USE -> outflow += entry.matter().nitrogenKg();
          case Party.LAND, Party.HAULED_AWAY -> land += entry.matter().nitrogenKg();
          default -> {}
        }
      }
    }
    lines.add(
        Gases.nitrousOxide(
            "decision.gases-outflow",
            Warming.nitrousOxideKg(Math.max(0, outflow), c.outflowNitrousOxide())));
    lines.add(
        Gases.nitrousOxide(
            "decision.gases-land",
            Warming.nitrousOxideKg(Math.max(0, land), c.landNitrousOxide())));
  }

  private void heap(List<Gases> lines) {
    if (run.compost() != null) {
      double kg =
          run.compost().estimate().mix().freshKg()
              - run.compost().estimate().mix().drainedWaterKg();
      lines.add(
          new Gases("decision.gases-heap", 0, kg * c.heapMethane(), kg * c.heapNitrousOxide()));
    }
  }

  private void still(List<Gases> lines) {
    if (run.ethanol() == null) {
      return;
    }
    EthanolEstimate.HeatFigures heat = run.ethanol().estimate().heat();
    StoveGases stove = set.bind(StoveGases.class, heat.source());
    HeatSource source = set.bind(HeatSource.class, heat.source());
    double fired = heat.cutOrBoughtKWh();
    lines.add(
        new Gases(
            "decision.gases-still",
            fired * source.carbonDioxideKgKWh()
                + heat.electricityKWh()
                    * set.bind(HeatSource.class, HeatSource.ELECTRICITY).carbonDioxideKgKWh(),
            fired * stove.methaneKgKWh(),
            fired * stove.nitrousOxideKgKWh()));
  }

  /**
   * What is spared elsewhere: fuel and electricity in whose place gas and alcohol are burned, and
   * fertiliser.
   *
   * @param service what the gas does
   * @param fuel id of the displaced fuel
   */
  static List<Gases> spared(LoopRun run, GasService service, String fuel, CoefficientSet set) {
    List<Gases> lines = new ArrayList<>();
    HeatSource source = set.bind(HeatSource.class, fuel);
    StoveGases stove = set.bind(StoveGases.class, fuel);
    lines.add(burned(SPARED_FUEL, service.annualDisplacedFuelKWh(), source, stove));
    lines.add(
        burned(
            SPARED_ELECTRICITY,
            service.annualDisplacedElectricityKWh(),
            set.bind(HeatSource.class, HeatSource.ELECTRICITY),
            set.bind(StoveGases.class, HeatSource.ELECTRICITY)));
    if (run.ethanol() != null) {
      lines.add(
          burned(
              "decision.gases-displaced-by-alcohol",
              run.ethanol().estimate().annual().fuelEnergyKWh()
                  * set.bind(UseEfficiencies.class).alcohol()
                  / source.stoveEfficiency(),
              source,
              stove));
    }
    if (run.compost() != null) {
      WarmingCoefficients c = set.bind(WarmingCoefficients.class);
      lines.add(
          Gases.carbonDioxide(
              "decision.gases-fertiliser",
              run.compost().estimate().land().firstYearNitrogenKg() * c.fertiliserGases()));
    }
    lines.removeIf(Gases::none);
    return List.copyOf(lines);
  }

  private static Gases burned(String code, double kWh, HeatSource source, StoveGases stove) {
    return new Gases(
        code,
        kWh * source.carbonDioxideKgKWh(),
        kWh * stove.methaneKgKWh(),
        kWh * stove.nitrousOxideKgKWh());
  }
}
