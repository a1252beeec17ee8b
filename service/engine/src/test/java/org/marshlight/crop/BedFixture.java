package org.marshlight.crop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.MonthlyNormals;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
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
import org.marshlight.wetland.WetlandOutcome;

/** Sites, streams and beds for the tests of beds and plants. */
public final class BedFixture {

  public static final CoefficientSet CENTRAL = CoefficientBook.standard().central();

  private BedFixture() {}

  /** Temperate hill site with even rain. */
  public static ClimateYear hill() {
    return year(
        46.6,
        new double[] {-2.5, -0.4, 4.2, 9.0, 13.8, 17.4, 19.3, 18.8, 14.4, 9.1, 3.2, -1.4},
        new double[] {1.35, 2.30, 3.55, 4.55, 5.45, 5.95, 6.05, 5.20, 3.80, 2.40, 1.45, 1.05},
        new double[] {42, 41, 55, 68, 92, 118, 122, 110, 96, 92, 78, 53});
  }

  /** Hot and rainless in summer. */
  public static ClimateYear dry() {
    return year(
        33,
        new double[] {8, 10, 14, 18, 23, 28, 32, 32, 28, 21, 14, 9},
        new double[] {3, 3.8, 5, 6.2, 7.2, 8, 7.8, 7.2, 6, 4.6, 3.4, 2.8},
        new double[] {40, 35, 20, 5, 0, 0, 0, 0, 0, 5, 20, 40});
  }

  /** A site by its monthly means; wind and humidity are those of a usual place. */
  public static ClimateYear year(
      double latitudeDeg, double[] airC, double[] solarKWh, double[] rainMm) {
    MonthlyNormals normals =
        new MonthlyNormals(
            Months.list(airC),
            null,
            null,
            Months.list(solarKWh),
            Months.list(Months.constant(2)),
            10.0,
            Months.list(Months.constant(70)),
            null,
            Months.list(rainMm));
    SiteDesign site =
        new SiteDesign(
            new ClimateChoice(null, normals),
            latitudeDeg,
            0.0,
            100.0,
            "moist-loam",
            null,
            null,
            null);
    return ClimateYear.of(
        ClimateModel.prepare(site, new Defaults(CENTRAL), CENTRAL, new ArrayList<>()));
  }

  /** Outflow of a septic tank, the same on each day. */
  public static WaterStream septic(double flowM3Day) {
    return septic(flowM3Day, 1);
  }

  /** Outflow of a septic tank with all strengths times a factor. */
  public static WaterStream septic(double flowM3Day, double strength) {
    return stream(flowM3Day, 185 * strength, 83 * strength, 70 * strength, 12 * strength);
  }

  /** A stream of given strengths, mg/L. */
  public static WaterStream stream(
      double flowM3Day, double bod5, double solids, double nitrogen, double phosphorus) {
    List<Matter> monthly = new ArrayList<>();
    double[] bod5Kg = new double[Months.COUNT];
    double[] solidsKg = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double m3 = flowM3Day * Months.days(month);
      bod5Kg[month] = bod5 * m3 / 1000;
      solidsKg[month] = solids * m3 / 1000;
      double cod = 1.84 * bod5Kg[month];
      monthly.add(
          new Matter(
              1000 * m3,
              0.7 * cod,
              0.5 * m3,
              cod,
              0.35 * cod,
              0.1 * m3,
              0.25 * nitrogen * m3 / 1000,
              0.75 * nitrogen * m3 / 1000,
              0,
              phosphorus * m3 / 1000,
              2 * phosphorus * m3 / 1000));
    }
    return new WaterStream(
        List.copyOf(monthly),
        bod5Kg,
        solidsKg,
        Months.constant(1e6 * bod5 / 185),
        Months.constant(13),
        true);
  }

  public static BedDesign gravel(double areaM2, String plant, double harvested) {
    return bed(BedKind.HORIZONTAL_SUBSURFACE, areaM2, 0.6, plant, harvested);
  }

  public static BedDesign open(double areaM2, String plant, double harvested) {
    return bed(BedKind.FREE_WATER_SURFACE, areaM2, 0.3, plant, harvested);
  }

  public static BedDesign bed(
      BedKind kind, double areaM2, double depthM, String plant, double harvested) {
    return new BedDesign(
        kind, areaM2, depthM, null, "medium-gravel", plant, harvested, null, 0.0, 1.0, null);
  }

  /** The same bed with another area and under another cover. */
  public static BedDesign with(BedDesign bed, double areaM2, double light) {
    return new BedDesign(
        bed.kind(),
        areaM2,
        bed.depthM(),
        bed.lengthM(),
        bed.medium(),
        bed.plant(),
        bed.harvestedFraction(),
        bed.monthsOff(),
        bed.mulchM(),
        light,
        bed.harvestMonth());
  }

  public static WetlandModel.Inputs<CropGrowth> inputs(
      ClimateYear year, WaterStream stream, DiversionDesign diversion, BedDesign... beds) {
    return new WetlandModel.Inputs<>(
        Arrays.asList(beds),
        WaterUse.IRRIGATION,
        diversion,
        List.of(new Intake(Party.TANK, stream)),
        year.site(),
        CropModel.stands(Arrays.asList(beds), year, CENTRAL),
        Destinations.of(Party.WATER_USE, Party.STILL, Party.HEAP));
  }

  public static WetlandOutcome<CropGrowth> run(
      ClimateYear year, WaterStream stream, BedDesign... beds) {
    return WetlandModel.run(inputs(year, stream, null, beds), CENTRAL);
  }
}
