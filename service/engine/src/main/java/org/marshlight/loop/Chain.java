package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.ReferenceEvapotranspiration;
import org.marshlight.compost.CompostModel;
import org.marshlight.compost.CompostOutcome;
import org.marshlight.compost.CompostSite;
import org.marshlight.compost.Material;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropModel;
import org.marshlight.crop.CropOutcome;
import org.marshlight.crop.CropStand;
import org.marshlight.crop.Harvest;
import org.marshlight.digester.DigesterModel;
import org.marshlight.digester.DigesterOutcome;
import org.marshlight.digester.TankYears;
import org.marshlight.ethanol.EthanolModel;
import org.marshlight.ethanol.EthanolOutcome;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Waste;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.Intake;
import org.marshlight.wetland.WetlandModel;
import org.marshlight.wetland.WetlandOutcome;

/** One plan's chain of stages, ready to be passed through. */
final class Chain {

  private static final String STILLAGE = "stillage";
  private static final String TOPS = "wetland-tops";

  private final ResolvedPlan plan;
  private final StagesToRun stages;
  private final Receivers receivers;
  private final ClimateYear year;
  private final CoefficientSet set;
  private final TankYears tanks;
  private final List<CropStand> stands;

  Chain(
      ResolvedPlan plan,
      StagesToRun stages,
      ClimateYear year,
      CoefficientSet set,
      TankYears tanks) {
    this.plan = plan;
    this.stages = stages;
    this.receivers = Receivers.of(plan, stages);
    this.year = year;
    this.set = set;
    this.tanks = tanks;
    this.stands = stages.beds() ? CropModel.stands(plan.beds(), year, set) : List.of();
  }

  /** Runs every stage once. */
  ChainRun pass(Returned returned) {
    List<Account> otherAccounts = new ArrayList<>();
    List<Notice> notices = new ArrayList<>();
    List<Supplier<StageWorking>> working = new ArrayList<>();
    working.add(() -> new StageWorking(Stage.LOOP, ClimateModel.working(year.site())));

    DigesterOutcome digester = stages.tank() ? tank(returned) : null;
    if (digester != null) {
      working.add(() -> new StageWorking(Stage.DIGESTER, digester.working().get()));
    }
    WaterStream soaked = soakedGreywater();
    if (soaked != null) {
      otherAccounts.add(soakage(soaked.annual()));
    }
    WetlandModel.Inputs<CropGrowth> bedInputs = stages.beds() ? beds(digester) : null;
    WetlandOutcome<CropGrowth> wetland =
        bedInputs == null ? null : WetlandModel.run(bedInputs, set);
    CropOutcome crop =
        wetland == null
            ? null
            : CropModel.outcome(stands, wetland.growths(), year, plan.humanOrigin());
    if (wetland != null) {
      working.add(() -> new StageWorking(Stage.WETLAND, WetlandModel.working(bedInputs, set)));
      working.add(() -> new StageWorking(Stage.CROP, CropModel.working(stands, year, set)));
    }
    Harvest harvest = harvest(crop);
    EthanolOutcome ethanol = stages.fuel() ? still(harvest) : null;
    if (ethanol != null) {
      working.add(
          () ->
              new StageWorking(
                  Stage.ETHANOL,
                  EthanolModel.working(plan.fuel(), plan.still(), harvest, set, airPressureKPa())));
    }
    CompostOutcome compost = null;
    if (stages.heap()) {
      List<Material> materials = materials(digester, harvest, ethanol);
      CompostSite site = new CompostSite(Months.list(year.site().airC()));
      compost = CompostModel.run(plan.compost(), materials, site, set);
      working.add(
          () ->
              new StageWorking(
                  Stage.COMPOST, CompostModel.working(plan.compost(), materials, site, set)));
    }
    remarks(notices);
    return new ChainRun(
        digester,
        wetland,
        crop,
        ethanol,
        compost,
        soaked,
        List.copyOf(otherAccounts),
        returned(harvest, ethanol),
        List.copyOf(notices),
        () -> working.stream().map(Supplier::get).toList());
  }

  private DigesterOutcome tank(Returned returned) {
    List<Waste> wastes = new ArrayList<>(LoadModel.toTank(plan.people(), plan.feeds(), set));
    for (Returned.Stream stream : returned.streams()) {
      wastes.add(
          LoadModel.returned(stream.name(), stream.from(), stream.annual(), stream.name(), set));
    }
    return DigesterModel.run(
        new DigesterModel.Inputs(
            year,
            plan.tank(),
            plan.cover(),
            plan.gas(),
            List.copyOf(wastes),
            plan.people() == null ? 0 : plan.people().count(),
            LoadModel.personDays(plan.people()),
            plan.toiletOnly(),
            receivers.effluent(),
            receivers.sludge()),
        set,
        tanks);
  }

  /** Greywater that neither enters the tank nor has a bed soaks away; null if there is none. */
  private WaterStream soakedGreywater() {
    return stages.tank() && plan.toiletOnly() && !greywaterToBed()
        ? GreywaterStream.of(plan.people(), year, set)
        : null;
  }

  private static Account soakage(Matter annual) {
    return Account.of(Party.GREYWATER_SOAKAGE)
        .received(Party.PEOPLE, annual)
        .gave(Party.SOIL, annual)
        .close();
  }

  private boolean greywaterToBed() {
    return stages.beds() && plan.routes().greywater() == RoutesDesign.GreywaterRoute.FIRST_BED;
  }

  private WetlandModel.Inputs<CropGrowth> beds(DigesterOutcome digester) {
    List<Intake> intakes = new ArrayList<>();
    if (plan.given().effluent() != null) {
      intakes.add(
          new Intake(GivenStreams.PARTY, GivenStreams.effluent(plan.given().effluent(), set)));
    } else {
      intakes.add(new Intake(Party.TANK, digester.effluent()));
      if (plan.toiletOnly() && greywaterToBed()) {
        intakes.add(new Intake(Party.PEOPLE, GreywaterStream.of(plan.people(), year, set)));
      }
    }
    return new WetlandModel.Inputs<>(
        plan.beds(),
        plan.waterUse(),
        plan.diversion(),
        List.copyOf(intakes),
        year.site(),
        stands,
        receivers.beds());
  }

  private Harvest harvest(CropOutcome crop) {
    if (plan.given().harvest() != null) {
      return GivenStreams.harvest(plan.given().harvest(), set);
    }
    return crop == null ? Harvest.NONE : crop.harvest();
  }

  private EthanolOutcome still(Harvest harvest) {
    return EthanolModel.run(
        plan.fuel(),
        plan.still(),
        harvest,
        set,
        plan.harvestOfHumanOrigin(),
        receivers.stillage(),
        airPressureKPa());
  }

  private double airPressureKPa() {
    return ReferenceEvapotranspiration.atmosphericPressureKPa(year.site().elevationM());
  }

  private List<Material> materials(
      DigesterOutcome digester, Harvest harvest, EthanolOutcome ethanol) {
    List<Material> materials = new ArrayList<>();
    boolean human = plan.harvestOfHumanOrigin();
    double unmashed = ethanol == null ? 1 : 1 - plan.fuel().mashedFraction();
    for (Harvest.Lot lot : harvest.lots()) {
      if (receivers.tops().equals(Party.HEAP)) {
        add(materials, lot.from(), "bed-tops", lot.tops(), human);
      }
      if (receivers.unmashedOrgans().equals(Party.HEAP)) {
        add(materials, lot.from(), "storage-organs", lot.organs().times(unmashed), human);
      }
    }
    if (ethanol != null && receivers.stillage().equals(Party.HEAP)) {
      add(materials, Party.STILL, STILLAGE, ethanol.stillage(), ethanol.humanOrigin());
    }
    if (ethanol == null && plan.given().stillage() != null) {
      add(
          materials,
          GivenStreams.PARTY,
          STILLAGE,
          GivenStreams.stillage(plan.given().stillage(), set),
          plan.given().stillage().ofHumanOrigin());
    }
    if (digester != null && receivers.sludge().equals(Party.HEAP)) {
      add(materials, Party.TANK, "septic-sludge", digester.sludge(), plan.humanOrigin());
    }
    return List.copyOf(materials);
  }

  private void add(
      List<Material> materials, String from, String name, Matter matter, boolean human) {
    if (matter.freshKg() > 0) {
      materials.add(Material.ofLoop(from, name, matter, human, set));
    }
  }

  private Returned returned(Harvest harvest, EthanolOutcome ethanol) {
    List<Returned.Stream> streams = new ArrayList<>();
    if (receivers.tops().equals(Party.TANK)) {
      for (Harvest.Lot lot : harvest.lots()) {
        streams.add(new Returned.Stream(TOPS, lot.from(), lot.tops(), "tops"));
      }
    }
    if (ethanol != null && receivers.stillage().equals(Party.TANK)) {
      streams.add(new Returned.Stream(STILLAGE, Party.STILL, ethanol.stillage(), STILLAGE));
    }
    return new Returned(List.copyOf(streams));
  }

  private void remarks(List<Notice> notices) {
    if (plan.humanOriginAssumed() && (stages.fuel() || stages.heap())) {
      notices.add(Notice.of("loop.human-origin-assumed"));
    }
    if (stages.beds() && !stages.heap() && receivers.tops().equals(Party.LAND)) {
      notices.add(Notice.of("loop.no-heap"));
    }
    if (stages.tank() && !stages.beds()) {
      notices.add(Notice.of("loop.no-beds"));
    }
  }
}
