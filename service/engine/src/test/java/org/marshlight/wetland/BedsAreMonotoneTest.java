package org.marshlight.wetland;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.crop.BedFixture;
import org.marshlight.crop.BedRequest;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropModel;
import org.marshlight.crop.CropStand;
import org.marshlight.crop.RandomBeds;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;

/** More bed, weaker water, warmer water: what must not turn the wrong way, on random beds. */
class BedsAreMonotoneTest {

  private static final long SEED = 77_000;
  private static final int PLANS = 400;

  /** Rounding, as a share of what comes. */
  private static final double SLACK = 1e-7;

  /**
   * A stand that its water starves is thinner on more bed: it takes up no less, but a little more
   * of that comes back as litter and a little less is carried off, and what it takes early the
   * makers of nitrogen gas do not get. As a share of what comes; the largest seen is 4e-5.
   */
  private static final double STARVED_STAND = 1e-4;

  /**
   * Holds for a bed, and for the last of a row. A larger bed before others can cool their water or
   * take the organic matter that their nitrate needs; that is as it should be.
   */
  @Test
  void aLargerBedNeverRemovesLessAtEqualWaterBalance() {
    for (int plan = 0; plan < PLANS; plan++) {
      Enlarged each = new Enlarged(plan);
      WaterStream stream = each.stream;
      WaterStream small = each.run(each.beds, false).outflow();
      WaterStream large = each.run(each.larger, false).outflow();
      noMore(each.where + " BOD5", sum(large.bod5Kg()), sum(small.bod5Kg()), sum(stream.bod5Kg()));
      noMore(
          each.where + " nitrogen",
          large.annual().nitrogenKg(),
          small.annual().nitrogenKg(),
          STARVED_STAND / SLACK * stream.annual().nitrogenKg());
      noMore(each.where + " coliforms", organisms(large), organisms(small), organisms(stream));
    }
  }

  /** With the stand held, what is left is the bed alone, and there the rule has no exception. */
  @Test
  void aLargerBedUnderTheSameStandNeverRemovesLessNitrogen() {
    for (int plan = 0; plan < PLANS; plan++) {
      Enlarged each = new Enlarged(plan);
      noMore(
          each.where,
          each.run(each.larger, true).outflow().annual().nitrogenKg(),
          each.run(each.beds, true).outflow().annual().nitrogenKg(),
          each.stream.annual().nitrogenKg());
    }
  }

  /** A random row of beds, and the same with its last bed enlarged. */
  private static final class Enlarged {

    private final ClimateYear year;
    private final List<BedDesign> beds;
    private final WaterStream stream;
    private final List<BedDesign> larger;
    private final String where;
    private final List<Stand<CropGrowth>> held;

    Enlarged(int plan) {
      RandomBeds random = new RandomBeds(SEED + plan);
      year = random.year();
      beds = new ArrayList<>(List.of(random.bed()));
      if (plan % 2 == 0) {
        beds.add(random.bed());
      }
      stream = random.stream();
      double factor = random.uniform(1.01, 4);
      larger = new ArrayList<>(beds);
      BedDesign last = beds.get(beds.size() - 1);
      larger.set(
          beds.size() - 1,
          BedFixture.with(last, last.areaM2() * factor, last.coverLightFraction()));
      where =
          "seed %s times %s, request %s"
              .formatted(SEED + plan, factor, BedRequest.of(year.site(), stream, beds));
      held = held();
    }

    /** Stands that grow as they would on the smaller bed, whatever bed they stand on. */
    private List<Stand<CropGrowth>> held() {
      List<CropGrowth> growths =
          BedsAreMonotoneTest.run(year, still(year.site()), stream, beds).growths();
      List<CropStand> stands = CropModel.stands(beds, year, BedFixture.CENTRAL);
      List<Stand<CropGrowth>> held = new ArrayList<>();
      for (int i = 0; i < beds.size(); i++) {
        held.add(new HeldStand(stands.get(i), growths.get(i)));
      }
      return held;
    }

    WetlandOutcome<CropGrowth> run(List<BedDesign> row, boolean sameStand) {
      return BedsAreMonotoneTest.run(
          still(year.site()),
          stream,
          row,
          sameStand ? held : CropModel.stands(row, year, BedFixture.CENTRAL));
    }
  }

  /** A stand whose year is already known. */
  private record HeldStand(CropStand stand, CropGrowth growth) implements Stand<CropGrowth> {

    @Override
    public double[] canopy() {
      return stand.canopy();
    }

    @Override
    public double smallStandCropCoefficient() {
      return stand.smallStandCropCoefficient();
    }

    @Override
    public double methaneKgM2Year() {
      return stand.methaneKgM2Year();
    }

    @Override
    public CropGrowth grow(StandSupply supply) {
      return growth;
    }
  }

  /** Holds for a bed; nutrients that a first bed takes in other shares can starve a second. */
  @Test
  void aWeakerInflowNeverGivesAStrongerOutflow() {
    for (int plan = 0; plan < PLANS; plan++) {
      RandomBeds random = new RandomBeds(SEED + 1000 + plan);
      ClimateYear year = random.year();
      List<BedDesign> beds = List.of(random.bed());
      WaterStream stream = random.stream();
      double factor = random.uniform(0.05, 0.98);
      WaterStream strong = run(year, year.site(), stream, beds).outflow();
      WaterStream weak = run(year, year.site(), diluted(stream, factor), beds).outflow();
      String request = BedRequest.of(year.site(), stream, beds);
      for (int month = 0; month < Months.COUNT; month++) {
        String where =
            "seed %s month %s factor %s, request %s"
                .formatted(SEED + 1000 + plan, month, factor, request);
        noMore(where, weak, strong, stream, month);
      }
    }
  }

  private static void noMore(
      String where, WaterStream weak, WaterStream strong, WaterStream inflow, int month) {
    noMore(where + " BOD5", weak.bod5Kg()[month], strong.bod5Kg()[month], sum(inflow.bod5Kg()));
    noMore(
        where + " solids",
        weak.suspendedSolidsKg()[month],
        strong.suspendedSolidsKg()[month],
        sum(inflow.suspendedSolidsKg()));
    noMore(where + " nitrogen", Matter::nitrogenKg, weak, strong, inflow, month);
    noMore(where + " phosphorus", Matter::phosphorusKg, weak, strong, inflow, month);
    noMore(where + " COD", Matter::codKg, weak, strong, inflow, month);
    noMore(
        where + " coliforms",
        weak.faecalColiformsPer100ML()[month] * weak.volumeM3(month),
        strong.faecalColiformsPer100ML()[month] * strong.volumeM3(month),
        organisms(inflow));
  }

  private static void noMore(
      String where,
      ToDoubleFunction<Matter> quantity,
      WaterStream weak,
      WaterStream strong,
      WaterStream inflow,
      int month) {
    noMore(
        where,
        quantity.applyAsDouble(weak.monthly().get(month)),
        quantity.applyAsDouble(strong.monthly().get(month)),
        quantity.applyAsDouble(inflow.annual()));
  }

  @Test
  void warmerWaterRemovesNoLessNitrogen() {
    for (int plan = 0; plan < PLANS; plan++) {
      RandomBeds random = new RandomBeds(SEED + 2000 + plan);
      BedSite bed = BedSite.of(0, random.bed(), BedFixture.CENTRAL);
      double volume = random.logUniform(0.05, 500);
      Matter load =
          new Matter(
              0,
              10,
              0,
              random.logUniform(0.01, 100),
              5,
              0,
              random.logUniform(1e-4, 10),
              random.logUniform(1e-4, 20),
              random.logUniform(1e-6, 10),
              0,
              0);
      double uptake = random.uniform(0, 0.4) * load.nitrogenKg();
      Carried carried = new Carried(load, load.codKg() / 2, 0);
      double before = Double.POSITIVE_INFINITY;
      for (double temperature = 0; temperature <= 32; temperature += 0.5) {
        BedMonth month = month(bed, carried, uptake, volume, temperature);
        double left = month.left().matter().nitrogenKg();
        assertThat(left)
            .as("seed %s at %s Cel, bed %s", SEED + 2000 + plan, temperature, bed.design())
            .isLessThanOrEqualTo(before + SLACK * load.nitrogenKg());
        before = left;
      }
    }
  }

  private static BedMonth month(
      BedSite bed, Carried load, double uptakeKg, double volume, double temperatureC) {
    Matter uptake = new Matter(0, 0, 0, 0, 0, 0, uptakeKg, 0, 0, 0, 0);
    return BedMonth.of(
        bed,
        new BedMonth.Setting(
            load,
            0,
            0,
            Matter.NONE,
            uptake,
            volume,
            TanksInSeries.hydraulicLoadingMYear(volume / 30, bed.areaM2()),
            WarmthAlongBed.even(temperatureC),
            30,
            0,
            4));
  }

  @Test
  void warmerInflowRemovesNoLessNitrogenOverTheYear() {
    for (int plan = 0; plan < PLANS; plan++) {
      RandomBeds random = new RandomBeds(SEED + 3000 + plan);
      ClimateYear year = random.year();
      List<BedDesign> beds = List.of(random.bed());
      WaterStream stream = random.stream();
      WaterStream cool = run(year, year.site(), at(stream, 8), beds).outflow();
      WaterStream warm = run(year, year.site(), at(stream, 25), beds).outflow();
      noMore(
          "seed %s, request %s"
              .formatted(SEED + 3000 + plan, BedRequest.of(year.site(), stream, beds)),
          warm.annual().nitrogenKg(),
          cool.annual().nitrogenKg(),
          stream.annual().nitrogenKg());
    }
  }

  private static void noMore(String where, double now, double before, double scale) {
    assertThat(now).as(where).isLessThanOrEqualTo(before + SLACK * scale);
  }

  private static WetlandOutcome<CropGrowth> run(
      ClimateYear year, SiteClimate site, WaterStream stream, List<BedDesign> beds) {
    return run(site, stream, beds, CropModel.stands(beds, year, BedFixture.CENTRAL));
  }

  private static WetlandOutcome<CropGrowth> run(
      SiteClimate site,
      WaterStream stream,
      List<BedDesign> beds,
      List<? extends Stand<CropGrowth>> stands) {
    return WetlandModel.run(
        new WetlandModel.Inputs<>(
            beds,
            WaterUse.IRRIGATION,
            null,
            List.of(new Intake(Party.TANK, stream)),
            site,
            stands,
            Destinations.of(Party.WATER_USE, Party.STILL, Party.HEAP)),
        BedFixture.CENTRAL);
  }

  /** The same site without rain and without evapotranspiration. */
  private static SiteClimate still(SiteClimate site) {
    double[] none = new double[Months.COUNT];
    return new SiteClimate(
        site.latitudeRad(),
        site.elevationM(),
        site.soil(),
        site.airC(),
        site.dailyRangeK(),
        site.dewPointC(),
        site.windMS(),
        none,
        site.solarKWhM2Day(),
        site.clearness(),
        none,
        site.ground(),
        site.groundReflectance(),
        site.horizonRad());
  }

  /** The same water with everything in it times a factor. */
  private static WaterStream diluted(WaterStream stream, double factor) {
    List<Matter> monthly = new ArrayList<>();
    for (Matter matter : stream.monthly()) {
      Matter water = Matter.water(matter.waterKg());
      monthly.add(matter.minus(water).times(factor).plus(water));
    }
    return new WaterStream(
        monthly,
        times(stream.bod5Kg(), factor),
        times(stream.suspendedSolidsKg(), factor),
        times(stream.faecalColiformsPer100ML(), factor),
        stream.temperatureC(),
        stream.humanOrigin());
  }

  private static WaterStream at(WaterStream stream, double temperatureC) {
    return new WaterStream(
        stream.monthly(),
        stream.bod5Kg(),
        stream.suspendedSolidsKg(),
        stream.faecalColiformsPer100ML(),
        Months.constant(temperatureC),
        stream.humanOrigin());
  }

  private static double[] times(double[] values, double factor) {
    double[] scaled = values.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return scaled;
  }

  private static double organisms(WaterStream stream) {
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      sum += stream.faecalColiformsPer100ML()[month] * stream.volumeM3(month);
    }
    return sum;
  }

  private static double sum(double[] values) {
    return Months.sum(values);
  }
}
