package org.marshlight.climate;

import static org.marshlight.climate.SolarRadiation.megajoules;

import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.evidence.Mark;
import org.marshlight.evidence.Step;

/**
 * Completes a site's monthly normals: humidity, wind and rain where not given, and what follows.
 */
public final class ClimateModel {

  private ClimateModel() {}

  /**
   * The climate of a legal site.
   *
   * @param site the site with its defaults filled
   * @param defaults fills what the normals leave out
   * @param set coefficients of the run
   * @param notices receives a remark on each quantity that was assumed
   */
  public static SiteClimate prepare(
      SiteDesign site, Defaults defaults, CoefficientSet set, List<Notice> notices) {
    ClimateCoefficients coefficients = set.bind(ClimateCoefficients.class);
    BuiltInClimate station = site.climate().station();
    MonthlyNormals normals = defaults.fill(site.climate().normals(), "/site/climate/monthly");
    if (station != null) {
      addStation(site, station, notices);
    }
    double latitude =
        FastMath.toRadians(site.latitudeDeg() == null ? station.latitudeDeg() : site.latitudeDeg());
    double elevation = elevation(site, station, notices);

    double[] air = Months.array(normals.meanAirTemperatureC());
    double[] extraterrestrial = Orbit.REAL.extraterrestrialMJM2Day(latitude);
    double[] solar = solar(normals, extraterrestrial, coefficients, notices);
    double[] clearness = clearness(solar, extraterrestrial);
    double[] range = dailyRange(normals, clearness, coefficients);
    double[] dewPoint = dewPoint(normals, air, range, coefficients, notices);
    double[] wind = wind(normals, coefficients, notices);
    double[] rain = rain(normals, coefficients, notices);
    boolean complete =
        normals.windMS() != null
            && (normals.dewPointC() != null || normals.relativeHumidityPercent() != null);
    double[] evapotranspiration =
        complete
            ? penmanMonteith(air, range, dewPoint, wind, solar, extraterrestrial, elevation)
            : hargreaves(air, range, extraterrestrial, notices);
    return new SiteClimate(
        latitude,
        elevation,
        set.bind(SoilProperties.class, site.soil()),
        air,
        range,
        dewPoint,
        wind,
        rain,
        solar,
        clearness,
        evapotranspiration,
        GroundSurface.ofAir(air, coefficients),
        reflectance(site.snowMonths(), coefficients),
        horizon(site.horizonDeg()));
  }

  private static void addStation(SiteDesign site, BuiltInClimate station, List<Notice> notices) {
    notices.addAll(StationDistance.of(site, station).notices(station));
    boolean recalled = Mark.FROM_MEMORY.words().equals(station.rainMark());
    if (recalled && site.climate().rainMm() == null) {
      notices.add(Notice.of("climate.rain-from-memory", "station", station.name()));
    }
  }

  private static double[] solar(
      MonthlyNormals normals,
      double[] extraterrestrial,
      ClimateCoefficients coefficients,
      List<Notice> notices) {
    if (normals.horizontalSolarKWhM2Day() != null) {
      return Months.array(normals.horizontalSolarKWhM2Day());
    }
    notices.add(Notice.of("climate.radiation-estimated"));
    double[] solar = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double range =
          normals.meanMaxAirTemperatureC().get(month) - normals.meanMinAirTemperatureC().get(month);
      double most = coefficients.greatestClearness() * extraterrestrial[month];
      solar[month] =
          Math.min(
                  most,
                  SolarRadiation.ofRangeMJM2Day(
                      coefficients.radiationOfRange(), range, extraterrestrial[month]))
              / megajoules(1);
    }
    return solar;
  }

  private static double[] reflectance(List<Integer> snowMonths, ClimateCoefficients coefficients) {
    double[] reflectance = Months.constant(coefficients.groundReflectance());
    for (int month = 0; month < Months.COUNT; month++) {
      if (snowMonths != null && snowMonths.contains(month + 1)) {
        reflectance[month] = coefficients.snowReflectance();
      }
    }
    return reflectance;
  }

  private static double[] horizon(List<Double> horizonDeg) {
    double[] horizon = new double[horizonDeg == null ? 0 : horizonDeg.size()];
    for (int sector = 0; sector < horizon.length; sector++) {
      horizon[sector] = FastMath.toRadians(horizonDeg.get(sector));
    }
    return horizon;
  }

  private static double elevation(SiteDesign site, BuiltInClimate station, List<Notice> notices) {
    if (site.elevationM() != null) {
      return site.elevationM();
    }
    if (station != null) {
      return station.elevationM();
    }
    notices.add(Notice.of("climate.elevation-assumed"));
    return 0;
  }

  private static double[] clearness(double[] solarKWh, double[] extraterrestrial) {
    double[] clearness = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      clearness[month] =
          extraterrestrial[month] > 0
              ? Math.min(1, megajoules(solarKWh[month]) / extraterrestrial[month])
              : 0;
    }
    return clearness;
  }

  private static double[] dailyRange(
      MonthlyNormals normals, double[] clearness, ClimateCoefficients coefficients) {
    double[] range = new double[Months.COUNT];
    boolean given =
        normals.meanMaxAirTemperatureC() != null && normals.meanMinAirTemperatureC() != null;
    for (int month = 0; month < Months.COUNT; month++) {
      double raw =
          given
              ? normals.meanMaxAirTemperatureC().get(month)
                  - normals.meanMinAirTemperatureC().get(month)
              : AirTemperatureWave.dailyRangeK(clearness[month]);
      range[month] = given ? raw : Math.max(coefficients.leastDailyRange(), raw);
    }
    return range;
  }

  private static double[] dewPoint(
      MonthlyNormals normals,
      double[] air,
      double[] range,
      ClimateCoefficients coefficients,
      List<Notice> notices) {
    double[] dewPoint = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      if (normals.dewPointC() != null) {
        dewPoint[month] = normals.dewPointC().get(month);
      } else if (normals.relativeHumidityPercent() != null) {
        double humidity = normals.relativeHumidityPercent().get(month) / 100;
        dewPoint[month] =
            ReferenceEvapotranspiration.dewPointC(
                humidity * ReferenceEvapotranspiration.saturationVapourPressureKPa(air[month]));
      } else {
        dewPoint[month] = air[month] - range[month] / 2 - coefficients.dewPointBelowMinimum();
      }
      dewPoint[month] = Math.min(dewPoint[month], air[month]);
    }
    if (normals.dewPointC() == null && normals.relativeHumidityPercent() == null) {
      notices.add(
          Notice.of(
              "climate.humidity-assumed", "belowMinimumK", coefficients.dewPointBelowMinimum()));
    }
    return dewPoint;
  }

  private static double[] wind(
      MonthlyNormals normals, ClimateCoefficients coefficients, List<Notice> notices) {
    if (normals.windMS() == null) {
      notices.add(Notice.of("climate.wind-assumed", "windMS", coefficients.windWhereUnknown()));
      return Months.constant(coefficients.windWhereUnknown());
    }
    double standard = ReferenceEvapotranspiration.windAt2M(1, 10);
    double measured = ReferenceEvapotranspiration.windAt2M(1, normals.windHeightM());
    double[] wind = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      wind[month] = normals.windMS().get(month) * measured / standard;
    }
    return wind;
  }

  private static double[] rain(
      MonthlyNormals normals, ClimateCoefficients coefficients, List<Notice> notices) {
    if (normals.rainMm() != null) {
      return Months.array(normals.rainMm());
    }
    notices.add(Notice.of("climate.rain-assumed", "rainMm", coefficients.rainWhereUnknown()));
    return Months.constant(coefficients.rainWhereUnknown());
  }

  private static double[] penmanMonteith(
      double[] air,
      double[] range,
      double[] dewPoint,
      double[] wind,
      double[] solarKWh,
      double[] extraterrestrial,
      double elevationM) {
    double[] monthly = new double[Months.COUNT];
    double gamma =
        ReferenceEvapotranspiration.psychrometricConstantKPaK(
            ReferenceEvapotranspiration.atmosphericPressureKPa(elevationM));
    for (int month = 0; month < Months.COUNT; month++) {
      double warm = air[month] + range[month] / 2;
      double cold = air[month] - range[month] / 2;
      double vapour = ReferenceEvapotranspiration.saturationVapourPressureKPa(dewPoint[month]);
      double saturation =
          (ReferenceEvapotranspiration.saturationVapourPressureKPa(warm)
                  + ReferenceEvapotranspiration.saturationVapourPressureKPa(cold))
              / 2;
      double solar = megajoules(solarKWh[month]);
      double clear = SolarRadiation.clearSkyMJM2Day(elevationM, extraterrestrial[month]);
      double net =
          ReferenceEvapotranspiration.netShortWaveMJM2Day(solar)
              - ReferenceEvapotranspiration.netLongWaveMJM2Day(
                  warm, cold, vapour, clear > 0 ? solar / clear : 0.5);
      double soilHeat =
          ReferenceEvapotranspiration.monthlySoilHeatMJM2Day(
              air[(month + 11) % 12], air[(month + 1) % 12]);
      monthly[month] =
          Math.max(
              0,
              ReferenceEvapotranspiration.penmanMonteithMmDay(
                  air[month],
                  net,
                  soilHeat,
                  ReferenceEvapotranspiration.windAt2M(wind[month], 10),
                  saturation,
                  Math.min(vapour, saturation),
                  gamma));
    }
    return monthly;
  }

  private static double[] hargreaves(
      double[] air, double[] range, double[] extraterrestrial, List<Notice> notices) {
    notices.add(Notice.of("climate.hargreaves-used"));
    double[] monthly = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      monthly[month] =
          Math.max(
              0,
              ReferenceEvapotranspiration.hargreavesMmDay(
                  Math.max(-17.8, air[month]), Math.max(0, range[month]), extraterrestrial[month]));
    }
    return monthly;
  }

  /** The steps behind a site's July (January south of the equator). */
  public static List<Step> working(SiteClimate climate) {
    int month = climate.latitudeRad() >= 0 ? 6 : 0;
    int day = Months.firstDay(month) + 16;
    Step declination = Step.of("climate.declination", day);
    Step distance = Step.of("climate.distance-factor", day);
    Step outside =
        Step.of(
            "climate.extraterrestrial-radiation",
            climate.latitudeRad(),
            declination.value(),
            distance.value());
    Step sunset = Step.of("climate.sunset-hour-angle", climate.latitudeRad(), declination.value());
    Step diffuse =
        Step.of("climate.monthly-diffuse-fraction", climate.clearness()[month], sunset.value());
    Step damping = Step.of("climate.damping-depth", climate.soil().diffusivityM2S());
    Step ground =
        Step.of(
            "climate.ground-temperature",
            1.0,
            day,
            climate.ground().meanC(),
            climate.ground().amplitudeK(),
            climate.ground().coldestDay(),
            damping.value());
    return List.of(declination, distance, outside, sunset, diffuse, damping, ground);
  }
}
