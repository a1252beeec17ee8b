package org.marshlight.crop;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.StandSupply;

/**
 * A stand that others measured, set against the model. Climates are means from memory, not those of
 * the years measured.
 *
 * @param where place and plant
 * @param what what was measured
 * @param low least of the measurements, in the unit of {@code what}
 * @param high greatest of them
 * @param source id of the source
 * @param year climate
 * @param plant id of the plant
 * @param nitrogenGM2 nitrogen within reach in a year; nothing lacks where it is infinite
 * @param cutInAugust whether all tops are cut each August
 * @param figure what the model gives for it
 */
record MeasuredStand(
    String where,
    String what,
    double low,
    double high,
    String source,
    ClimateYear year,
    String plant,
    double nitrogenGM2,
    boolean cutInAugust,
    ToDoubleFunction<CropGrowth> figure) {

  private static final double[] NO_RAIN = new double[Months.COUNT];
  private static final double CATTAIL_ORGANIC = 0.92;

  /** The eight stands, in the order of the method page. */
  static List<MeasuredStand> all() {
    ClimateYear minnesota =
        climate(
            45,
            new double[] {-9, -6, 0, 8, 15, 20, 23, 21, 16, 9, 1, -7},
            new double[] {6, 9.5, 13, 16.5, 20, 22.5, 22.5, 19, 14, 9, 6, 4.8});
    ClimateYear estonia =
        climate(
            58,
            new double[] {-5, -5.5, -1.5, 5, 11.5, 15.5, 17.5, 16.5, 11.5, 6, 1, -3},
            new double[] {1.5, 4, 8.5, 13.5, 19, 20.5, 19.5, 15, 9.5, 4.5, 1.7, 1});
    ClimateYear texas =
        climate(
            33,
            new double[] {7, 9, 14, 18, 22.5, 27, 29, 29, 25, 19, 13, 8},
            new double[] {10, 13, 16.5, 19.5, 21.5, 24, 24.5, 22, 18.5, 15, 11, 9.5});
    ClimateYear burullus =
        climate(
            31,
            new double[] {14, 14.5, 16.5, 19, 22, 25, 27, 27.5, 26, 23.5, 20, 16},
            new double[] {11, 14.5, 19, 23, 26, 28, 27.5, 25.5, 22, 17, 12.5, 10.5});
    ClimateYear galway =
        climate(
            53,
            new double[] {6, 6, 7, 8.5, 11, 13.5, 15.5, 15.5, 13.5, 11, 8, 6.5},
            new double[] {2.2, 4.5, 8, 13, 17.5, 17.5, 16, 13.5, 9.8, 5.6, 2.8, 1.7});
    ClimateYear winnipeg =
        climate(
            50,
            new double[] {-16, -13, -5.5, 4.5, 12, 17.5, 20, 19, 13, 5.5, -4, -13},
            new double[] {5, 8.5, 14, 18, 21.5, 23, 22.5, 19, 13, 8, 5, 4});
    ClimateYear czech =
        climate(
            50,
            new double[] {-1.5, -0.5, 3.5, 8.5, 13.5, 16.5, 18.5, 18, 13.5, 8.5, 3.5, 0},
            new double[] {3, 5.5, 9.5, 14.5, 18.5, 20, 19.5, 17, 12, 7.5, 3.5, 2.5});
    double fed = Double.POSITIVE_INFINITY;
    String cattail = "broadleaf-cattail";
    ToDoubleFunction<CropGrowth> tops = growth -> 1000 * growth.peakTopsKg();
    return List.of(
        new MeasuredStand(
            "Minnesota, managed cattail",
            "whole plants made, g/(m2.a)",
            2500,
            3000,
            "andrews-pratt-1978",
            minnesota,
            cattail,
            fed,
            false,
            growth -> 1000 * growth.growthKg()),
        new MeasuredStand(
            "Minnesota, wild cattail hybrid, given 20 g of nitrogen a square metre and year",
            "tops, g/m2",
            329,
            868,
            "penko-pratt-1987",
            minnesota,
            "narrowleaf-cattail",
            20,
            false,
            tops),
        new MeasuredStand(
            "Estonia, cattail in treatment beds",
            "tops, g/m2",
            370,
            1760,
            "maddison-2009",
            estonia,
            cattail,
            fed,
            false,
            tops),
        new MeasuredStand(
            "Texas, narrowleaf cattail in a pond",
            "tops without ash, g/m2",
            2559,
            2895,
            "hill-1987",
            texas,
            "narrowleaf-cattail",
            fed,
            false,
            growth -> 1000 * CATTAIL_ORGANIC * growth.peakTopsKg()),
        new MeasuredStand(
            "Lake Burullus, southern cattail",
            "greatest underground, g/m2",
            1193,
            2184,
            "eid-2010",
            burullus,
            cattail,
            fed,
            false,
            growth -> 1000 * greatest(growth.undergroundDryKg())),
        new MeasuredStand(
            "Galway, common reed",
            "greatest growth, g/(m2.d)",
            12.8,
            12.8,
            "healy-2007",
            galway,
            "common-reed",
            fed,
            false,
            growth -> fastestMonth(growth)),
        new MeasuredStand(
            "Czech gravel beds, common reed",
            "tops, g/m2",
            781,
            2532,
            "vymazal-2011",
            czech,
            "common-reed",
            fed,
            false,
            tops),
        new MeasuredStand(
            "Manitoba lagoon, cattail cut each August",
            "tops cut, g/m2",
            580,
            600,
            "jeke-2019",
            winnipeg,
            cattail,
            fed,
            true,
            growth -> 1000 * growth.tops().totalSolidsKg()));
  }

  /** What the model gives. */
  double modelled() {
    BedDesign bed =
        new BedDesign(
            BedKind.FREE_WATER_SURFACE,
            1.0,
            0.3,
            null,
            "medium-gravel",
            plant,
            0.0,
            null,
            0.0,
            1.0,
            cutInAugust ? Integer.valueOf(8) : null);
    double[] plenty = Months.constant(1000);
    double nitrogen =
        Double.isInfinite(nitrogenGM2)
            ? 1000
            : nitrogenGM2 / 1000 / 12 / BedFixture.CENTRAL.value("crop.available-nitrogen");
    StandSupply supply =
        new StandSupply(Months.constant(nitrogen), plenty, plenty, Months.constant(1));
    CropStand stand = CropStand.of(bed, year, BedFixture.CENTRAL);
    return figure.applyAsDouble(stand.grow(supply, 0, cutInAugust ? 1 : 0));
  }

  private static ClimateYear climate(double latitudeDeg, double[] airC, double[] solarMJ) {
    double[] kWh = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      kWh[month] = solarMJ[month] / 3.6;
    }
    return BedFixture.year(latitudeDeg, airC, kWh, NO_RAIN);
  }

  private static double greatest(double[] values) {
    double greatest = 0;
    for (double value : values) {
      greatest = Math.max(greatest, value);
    }
    return greatest;
  }

  /** Fastest gain of tops between the means of two months, g/(m2.d). */
  private static double fastestMonth(CropGrowth growth) {
    double fastest = 0;
    for (int month = 1; month < Months.COUNT; month++) {
      double days = (Months.days(month) + Months.days(month - 1)) / 2.0;
      double gain = growth.topsDryKg()[month] - growth.topsDryKg()[month - 1];
      fastest = Math.max(fastest, 1000 * gain / days);
    }
    return fastest;
  }
}
