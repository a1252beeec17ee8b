package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.Destinations;
import org.marshlight.wetland.DiversionDesign;
import org.marshlight.wetland.Intake;
import org.marshlight.wetland.WaterUse;
import org.marshlight.wetland.WetlandModel;

/** Legal beds, streams and sites drawn at random, from a seed that a failing test prints. */
public final class RandomBeds {

  private final Random random;
  private final List<String> plants;
  private final List<String> media;

  public RandomBeds(long seed) {
    this.random = new Random(seed);
    this.plants = List.copyOf(Catalogues.standard().ids("plants"));
    this.media = List.copyOf(Catalogues.standard().ids("media"));
  }

  /** A whole set of inputs, with odd streams, months off and valves among them. */
  public WetlandModel.Inputs<CropGrowth> inputs() {
    return inputs(BedFixture.CENTRAL);
  }

  /** The same with stands of other coefficients. */
  public WetlandModel.Inputs<CropGrowth> inputs(CoefficientSet set) {
    ClimateYear year = year();
    List<BedDesign> beds = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      beds.add(bed());
    }
    List<Intake> intakes = new ArrayList<>(List.of(new Intake(Party.TANK, stream())));
    if (random.nextInt(4) == 0) {
      intakes.add(new Intake(Party.PEOPLE, stream()));
    }
    return new WetlandModel.Inputs<>(
        beds,
        WaterUse.values()[random.nextInt(3)],
        random.nextInt(3) == 0 ? diversion() : null,
        intakes,
        year.site(),
        CropModel.stands(beds, year, set),
        new Destinations(
            Party.WATER_USE,
            List.of(
                new Destinations.Share(Party.STILL, 0.7), new Destinations.Share(Party.HEAP, 0.3)),
            List.of(new Destinations.Share(Party.HEAP, 1))));
  }

  /** Every coefficient of beds and plants anywhere between its bounds, some at a bound. */
  public CoefficientSet coefficients() {
    Map<String, Double> overrides = new TreeMap<>();
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      if (row.id().matches("(wetland|bed-kinds|media|plants|crop)\\..*")) {
        double share = Math.max(0, Math.min(1, random.nextDouble(-0.1, 1.1)));
        overrides.put(row.id(), row.least() + share * (row.most() - row.least()));
      }
    }
    return BedFixture.CENTRAL.with(overrides);
  }

  public ClimateYear year() {
    double latitude = random.nextDouble(-62, 62);
    double mean = random.nextDouble(-2, 28);
    double swing = random.nextDouble(0, 1) * Math.abs(latitude) / 3;
    double rain = random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 250);
    double clearness = random.nextDouble(0.3, 0.7);
    double[] air = new double[Months.COUNT];
    double[] solar = new double[Months.COUNT];
    double[] rainMm = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double summer = -Math.cos(2 * Math.PI * (month + 0.5 - 0.5) / 12) * Math.signum(latitude);
      air[month] = mean + swing * summer;
      solar[month] =
          clearness * Math.max(0.5, 10 * Math.cos(Math.toRadians(latitude)) + 3.5 * summer);
      rainMm[month] = rain * random.nextDouble(0, 2);
    }
    return BedFixture.year(latitude, air, solar, rainMm);
  }

  public BedDesign bed() {
    boolean below = random.nextBoolean();
    List<Integer> off = new ArrayList<>();
    if (random.nextInt(4) == 0) {
      for (int month = 1; month <= Months.COUNT; month++) {
        if (random.nextInt(4) == 0) {
          off.add(month);
        }
      }
    }
    return new BedDesign(
        below ? BedKind.HORIZONTAL_SUBSURFACE : BedKind.FREE_WATER_SURFACE,
        logUniform(0.5, 2000),
        random.nextDouble(0.1, 0.6),
        null,
        media.get(random.nextInt(media.size())),
        plants.get(random.nextInt(plants.size())),
        random.nextInt(5) == 0 ? 1 : random.nextDouble(0, 1),
        off.isEmpty() ? null : off,
        random.nextDouble(0, 0.3),
        random.nextInt(3) == 0 ? random.nextDouble(0.05, 1) : 1,
        random.nextInt(2) == 0 ? null : Integer.valueOf(1 + random.nextInt(12)));
  }

  /** A stream whose flow may stop in some months, or be nought all year. */
  public WaterStream stream() {
    double flow = random.nextInt(12) == 0 ? 0 : logUniform(0.001, 20);
    WaterStream even =
        BedFixture.stream(
            flow,
            logUniform(1, 3000),
            logUniform(0.1, 1000),
            random.nextInt(8) == 0 ? 0 : logUniform(0.1, 1500),
            random.nextInt(8) == 0 ? 0 : logUniform(0.01, 200));
    return random.nextInt(3) == 0 ? interrupted(even) : even;
  }

  private WaterStream interrupted(WaterStream stream) {
    List<Matter> monthly = new ArrayList<>();
    double[] bod5 = stream.bod5Kg().clone();
    double[] solids = stream.suspendedSolidsKg().clone();
    double[] coliforms = stream.faecalColiformsPer100ML().clone();
    for (int month = 0; month < Months.COUNT; month++) {
      boolean stops = random.nextInt(3) == 0;
      monthly.add(stops ? Matter.NONE : stream.monthly().get(month));
      if (stops) {
        bod5[month] = 0;
        solids[month] = 0;
        coliforms[month] = 0;
      }
    }
    return new WaterStream(
        monthly, bod5, solids, coliforms, stream.temperatureC(), stream.humanOrigin());
  }

  private DiversionDesign diversion() {
    return new DiversionDesign(
        random.nextBoolean() ? List.of(1 + random.nextInt(12)) : null,
        random.nextBoolean(),
        random.nextBoolean(),
        random.nextBoolean());
  }

  public double logUniform(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  public double uniform(double low, double high) {
    return random.nextDouble(low, high);
  }
}
