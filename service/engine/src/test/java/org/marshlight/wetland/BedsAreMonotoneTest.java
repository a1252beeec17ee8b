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
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropModel;
import org.marshlight.crop.CropStand;
import org.marshlight.crop.RandomBeds;
import org.marshlight.crop.ReadyRequest;
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
   * What the stand of a larger bed may change in the nitrogen that leaves, as a share of what
   * comes. A starved stand takes up the same nutrients in other months when it is spread over more
   * bed. In a month that lacks organic matter for nitrate, what plants take is removed beside what
   * turns to gas; in any other it is removed in its stead. The greatest change that four thousand
   * plans showed was 0.0012.
   */
  private static final double STAND_SLACK = 0.002;

  /**
   * Exact with what the plants take held as it is. Holds for a bed, and for the last of a row: a
   * larger bed before others can cool their water or take the organic matter that their nitrate
   * needs, and that is as it should be.
   */
  @Test
  void aLargerBedNeverRemovesLessAtEqualWaterBalanceAndEqualUptake() {
    for (int plan = 0; plan < PLANS; plan++) {
      LargerBed larger = new LargerBed(SEED + plan);
      larger.assertNoMore(larger.withTheStandOfTheSmaller(), SLACK);
    }
  }

  @Test
  void aLargerBedWithItsOwnStandRemovesNoLessAtEqualWaterBalance() {
    for (int plan = 0; plan < PLANS; plan++) {
      LargerBed larger = new LargerBed(SEED + plan);
      larger.assertNoMore(larger.withItsOwnStand(), STAND_SLACK);
    }
  }

  /** A row of beds, and the same with its last bed made larger. */
  private static final class LargerBed {

    private final long seed;
    private final ClimateYear year;
    private final WaterStream stream;
    private final List<BedDesign> beds = new ArrayList<>();
    private final List<BedDesign> larger;
    private final WetlandOutcome<CropGrowth> small;

    LargerBed(long seed) {
      this.seed = seed;
      RandomBeds random = new RandomBeds(seed);
      year = random.year();
      beds.add(random.bed());
      if (seed % 2 == 0) {
        beds.add(random.bed());
      }
      stream = random.stream();
      larger = new ArrayList<>(beds);
      int last = beds.size() - 1;
      BedDesign bed = beds.get(last);
      double area = bed.areaM2() * random.uniform(1.01, 4);
      larger.set(last, BedFixture.with(bed, area, bed.coverLightFraction()));
      small = run(year, still(year.site()), stream, beds);
    }

    WaterStream withItsOwnStand() {
      return run(year, still(year.site()), stream, larger).outflow();
    }

    WaterStream withTheStandOfTheSmaller() {
      List<Stand<CropGrowth>> stands = new ArrayList<>();
      List<CropStand> own = CropModel.stands(larger, year, BedFixture.CENTRAL);
      for (int i = 0; i < larger.size(); i++) {
        stands.add(new StandHeld(own.get(i), small.growths().get(i)));
      }
      return run(still(year.site()), stream, larger, stands).outflow();
    }

    void assertNoMore(WaterStream large, double nitrogenSlack) {
      WaterStream before = small.outflow();
      String as = ReadyRequest.of(seed, year.site(), stream, larger) + " beside " + beds;
      noMore(as + " BOD5", sum(large.bod5Kg()), sum(before.bod5Kg()), sum(stream.bod5Kg()));
      noMore(
          as + " nitrogen",
          large.annual().nitrogenKg(),
          before.annual().nitrogenKg(),
          nitrogenSlack / SLACK * stream.annual().nitrogenKg());
      noMore(as + " coliforms", organisms(large), organisms(before), organisms(stream));
    }
  }

  /** A stand that grows as another did, whatever it is given. */
  private record StandHeld(CropStand stand, CropGrowth growth) implements Stand<CropGrowth> {

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
      for (int month = 0; month < Months.COUNT; month++) {
        String where =
            ReadyRequest.of(SEED + 1000 + plan, year.site(), stream, beds)
                + " month "
                + month
                + " factor "
                + factor;
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
            .as("seed %s at %s Cel", SEED + 2000 + plan, temperature)
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
          ReadyRequest.of(SEED + 3000 + plan, year.site(), stream, beds),
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
