package org.marshlight.digester;

import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;
import org.marshlight.feed.Wastewater;

/**
 * A tank, reactor or bottle that others measured, set against the model with its central
 * coefficients; what the publication does not tell is assumed and said.
 *
 * @param what what was measured, with its unit
 * @param low least of the measurements
 * @param high greatest of them
 * @param modelled what the model gives
 * @param assumed inputs that were not published
 * @param source id of the source
 */
record MeasuredTank(
    String what, double low, double high, double modelled, String assumed, String source) {

  private static final DigestionCoefficients CENTRAL =
      TankFixture.CENTRAL.bind(DigestionCoefficients.class);

  private static final double SEA_LEVEL_KPA = 101.325;

  /** Every case, warm to cold. */
  static List<MeasuredTank> all() {
    DigesterEstimate california = california();
    return List.of(
        new MeasuredTank(
            "eight septic tanks, California: methane, g a person and day",
            8.4,
            13.4,
            california.annual().methaneGPerPersonDay(),
            "4 people, all wastewater, 4.5 m3 under earth, pumped every 4 years, normals of Sacramento",
            "diaz-valbuena-2011"),
        new MeasuredTank(
            "outflow of Californian tanks: BOD5, mg/L",
            185,
            185,
            mean(california.effluent().bod5MgL()),
            "the same",
            "california-septic"),
        new MeasuredTank(
            "Californian tanks: share of the BOD5 removed",
            0.589,
            0.589,
            1 - mean(california.effluent().bod5MgL()) / rawBod5MgL(),
            "the same; 450 mg/L came in",
            "california-septic"),
        new MeasuredTank(
            "outflow of Californian tanks: nitrogen, mg/L",
            70,
            70,
            mean(california.effluent().totalNitrogenMgL()),
            "the same",
            "california-septic"),
        new MeasuredTank(
            "sludge: dry solids, kg a person and year",
            1,
            10,
            california.sludge().pumpedDryKgPerYear() / 4,
            "the same",
            "gray-1995"),
        new MeasuredTank(
            "sludge: volume, L a person and year",
            65,
            150,
            california.sludge().pumpedM3PerYear() * 1000 / 4,
            "the same",
            "gray-1995"),
        new MeasuredTank(
            "23 black-water tanks, Hanoi: methane, g a person and day",
            2.2,
            26.8,
            gasGPerPersonDay(5, Wastewater.TOILET_ONLY, 2.5, 10, swing(25, 4)),
            "5 people, toilet water alone, 2.5 m3, pumped every 10 years (4 to 23 measured), 21 to 29 Cel",
            "hanoi-tanks"),
        new MeasuredTank(
            "two tanks, Ireland, 446 days: methane, g a person and day",
            0.26,
            0.30,
            gasGPerPersonDay(4, Wastewater.ALL, 3.5, 4, swing(10.5, 4.5)),
            "4 people, all wastewater, 3.5 m3, pumped every 4 years, 6 to 15 Cel",
            "knappe-2022"),
        new MeasuredTank(
            "on-site reactor of 1.2 m3, Netherlands: gas of 78 % methane, L a day, mean",
            67,
            67,
            bogteMeanL(),
            "4 people, toilet water alone, sludge drawn every year, 7 to 19 Cel",
            "bogte-1993"),
        new MeasuredTank(
            "stirred dairy digesters, 17 days: methane at 28 over 35 Cel",
            0.82,
            0.92,
            stirredRatio("cattle-manure", 17, 28, 35),
            "5 points either way",
            "dairy-digesters-2015"),
        new MeasuredTank(
            "stirred dairy digesters, 17 days: methane at 22 over 35 Cel",
            0.65,
            0.75,
            stirredRatio("cattle-manure", 17, 22, 35),
            "5 points either way",
            "dairy-digesters-2015"),
        new MeasuredTank(
            "cow manure, La Paz, 20 to 50 days: methane at 11 over 35 Cel",
            0.13,
            0.26,
            stirredRatio("cattle-manure", 35, 11, 35),
            "35 days, stirred",
            "alvarez-2006"),
        capacity(25, 0.53, 0.80),
        capacity(20, 0.33, 0.49),
        capacity(15, 0.05, 0.09),
        batch(15, 0.95, 1),
        batch(8, 0.75, 1),
        batch(4, 0, 0.35));
  }

  /** Methane of adapted sewage sludge that a long batch came to, over the theoretical. */
  private static MeasuredTank batch(double temperatureC, double low, double high) {
    return new MeasuredTank(
        "batches of sewage, cold-adapted sludge: final methane at "
            + (int) temperatureC
            + " Cel over the theoretical",
        low,
        high,
        MethaneKinetics.coldCapacity(temperatureC, CENTRAL.coldZero(), CENTRAL.coldCapacityAtTen()),
        "capacity of adapted sludge stands for the share that is reached",
        "bowen-2014");
  }

  /** Greatest methane rate of stirred pig manure over that at 35 Cel; a fifth either way. */
  private static MeasuredTank capacity(double temperatureC, double low, double high) {
    return new MeasuredTank(
        "stirred batches of pig manure: greatest methane rate at "
            + (int) temperatureC
            + " over 35 Cel",
        low,
        high,
        rate(temperatureC) / rate(35),
        "rate of hydrolysis times capacity; a fifth either way",
        "yang-2016");
  }

  private static double rate(double temperatureC) {
    return MethaneKinetics.arrheniusFactor(temperatureC, CENTRAL.hydrolysisActivation())
        * MethaneKinetics.coldCapacity(
            temperatureC, CENTRAL.coldZero(), CENTRAL.coldCapacityAtTen());
  }

  private static DigesterEstimate california() {
    return TankFixture.run(
            TankFixture.year("sacramento-executive"),
            TankFixture.tank(4.5, 4),
            TankFixture.earth(),
            4,
            TankFixture.wastes(4))
        .estimate();
  }

  private static double rawBod5MgL() {
    double bod5Kg = 0;
    double waterKg = 0;
    for (Waste waste : TankFixture.wastes(4)) {
      bod5Kg += waste.annual().codKg() * waste.digestibility().bod5PerCod();
      waterKg += waste.annual().waterKg();
    }
    return 1e6 * bod5Kg / waterKg;
  }

  private static double mean(List<Double> months) {
    return months.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double bogteMeanL() {
    double gramsPersonDay = gasGPerPersonDay(4, Wastewater.TOILET_ONLY, 1.2, 1, swing(13, 6));
    double gramsPerL =
        Stoichiometry.METHANE
            / Stoichiometry.methaneOfCodNm3(Stoichiometry.METHANE * Stoichiometry.METHANE_COD);
    return 4 * gramsPersonDay / gramsPerL / 0.78;
  }

  private static double gasGPerPersonDay(
      int people, Wastewater wastewater, double volumeM3, int years, double[] liquorC) {
    PeopleDesign household =
        new Defaults(TankFixture.CENTRAL)
            .fill(new PeopleDesign(people, null, wastewater), "/people");
    DigestionYear year =
        new Digestion(
                LoadModel.toTank(household, List.of(), TankFixture.CENTRAL),
                volumeM3,
                2,
                liquorC,
                years,
                8,
                SEA_LEVEL_KPA,
                CENTRAL)
            .periodic();
    double cod =
        Months.sum(year.methaneCodPeople)
            + Months.sum(year.methaneCodOther)
            - Months.sum(year.dissolvedMethaneCod);
    return 1000 * cod / Stoichiometry.METHANE_COD / people / Months.DAYS_PER_YEAR;
  }

  /** A liquor that follows the seasons, coldest in the middle of February. */
  private static double[] swing(double meanC, double amplitudeK) {
    double[] daily = new double[Months.DAYS_PER_YEAR];
    for (int day = 0; day < daily.length; day++) {
      daily[day] =
          meanC - amplitudeK * FastMath.cos(2 * FastMath.PI * (day - 45) / Months.DAYS_PER_YEAR);
    }
    return daily;
  }

  /**
   * Hydrolysis of a feed's fast and slow parts in a stirred tank, at one temperature over another.
   */
  private static double stirredRatio(
      String feed, double retentionDays, double coldC, double warmC) {
    FeedAnalysis analysis = TankFixture.CENTRAL.bind(FeedAnalysis.class, feed);
    return taken(analysis, retentionDays, coldC) / taken(analysis, retentionDays, warmC);
  }

  private static double taken(FeedAnalysis analysis, double retentionDays, double temperatureC) {
    double factor = MethaneKinetics.arrheniusFactor(temperatureC, CENTRAL.hydrolysisActivation());
    double slow = CENTRAL.slowShare();
    double fastRate = analysis.hydrolysisRate35PerDay();
    double slowRate = Math.min(CENTRAL.slowRate35(), fastRate);
    return (1 - slow) * MethaneKinetics.tanksInSeriesConversion(fastRate * factor, retentionDays, 1)
        + slow * MethaneKinetics.tanksInSeriesConversion(slowRate * factor, retentionDays, 1);
  }
}
