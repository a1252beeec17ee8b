package org.marshlight.climate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;

/**
 * How far a site lies from the station whose weather it names; zero where the site does not say.
 *
 * @param latitudeDeg difference in latitude, degrees, north positive
 * @param longitudeDeg difference in longitude, degrees, -180 to 180, east positive
 * @param heightM difference in height, m, up positive
 */
record StationDistance(double latitudeDeg, double longitudeDeg, double heightM) {

  /**
   * The distance of a site from a station.
   *
   * @param site the site
   * @param station the station that it names
   */
  static StationDistance of(SiteDesign site, BuiltInClimate station) {
    return new StationDistance(
        difference(site.latitudeDeg(), station.latitudeDeg()),
        Math.IEEEremainder(difference(site.longitudeDeg(), station.longitudeDeg()), 360),
        difference(site.elevationM(), station.elevationM()));
  }

  private static double difference(Double own, double station) {
    return own == null ? 0 : own - station;
  }

  /**
   * One fault for each coordinate in which the site lies too far from the station.
   *
   * @param site the site
   * @param station the station that it names
   * @param set coefficients of the run
   */
  List<Fault> faults(SiteDesign site, BuiltInClimate station, CoefficientSet set) {
    StationReach reach = set.bind(StationReach.class);
    List<Fault> faults = new ArrayList<>();
    if (Math.abs(latitudeDeg) > reach.latitudeDeg()) {
      faults.add(
          tooFar(
              station.name(),
              "latitudeDeg",
              "latitude",
              site.latitudeDeg(),
              range(station.latitudeDeg(), reach.latitudeDeg(), "deg"),
              latitudeDeg,
              reach.latitudeDeg(),
              "degrees"));
    }
    if (Math.abs(longitudeDeg) > reach.longitudeDeg()) {
      faults.add(
          tooFar(
              station.name(),
              "longitudeDeg",
              "longitude",
              site.longitudeDeg(),
              range(station.longitudeDeg(), reach.longitudeDeg(), "deg"),
              longitudeDeg,
              reach.longitudeDeg(),
              "degrees"));
    }
    if (Math.abs(heightM) > reach.heightM()) {
      faults.add(
          tooFar(
              station.name(),
              "elevationM",
              "height",
              site.elevationM(),
              range(station.elevationM(), reach.heightM(), "m"),
              heightM,
              reach.heightM(),
              "m"));
    }
    return faults;
  }

  /** Remarks on a site that is near the station but not at it. */
  List<Notice> notices(BuiltInClimate station) {
    boolean atStation = latitudeDeg == 0 && longitudeDeg == 0 && heightM == 0;
    return atStation
        ? List.of()
        : List.of(
            Notice.of(
                "climate.near-station",
                "station",
                station.name(),
                "latitudeDeg",
                Math.abs(latitudeDeg),
                "longitudeDeg",
                Math.abs(longitudeDeg),
                "elevationM",
                Math.abs(heightM)));
  }

  /** Both ends written out in full, since a rounded end would be refused. */
  private static String range(double centre, double reach, String unit) {
    return exact(centre, -reach) + " to " + exact(centre, reach) + " " + unit;
  }

  private static String exact(double centre, double reach) {
    return BigDecimal.valueOf(centre)
        .add(BigDecimal.valueOf(reach))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Fault tooFar(
      String station,
      String field,
      String coordinate,
      double value,
      String allowed,
      double difference,
      double reach,
      String unit) {
    return Fault.of(
        "climate.station-too-far",
        "/site/" + field,
        value,
        allowed,
        "station",
        station,
        "coordinate",
        coordinate,
        "difference",
        Math.abs(difference),
        "unit",
        unit,
        "reach",
        reach);
  }
}
