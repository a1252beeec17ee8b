package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.MonthlyNormals;
import org.marshlight.climate.SiteClimate;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Months;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.feed.WaterStream;
import org.marshlight.loop.GivenDesign;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.WetlandModel;

/**
 * Random beds written as the body of a request for the estimate of beds, so that a failing test can
 * be looked at in the service. The stream is its yearly mean; months without flow are told beside.
 */
public final class ReadyRequest {

  private ReadyRequest() {}

  /** The seed and the request. */
  public static String of(long seed, SiteClimate site, WaterStream stream, List<BedDesign> beds) {
    return "seed %d, flow in months %s, request {\"site\":%s,\"given\":%s,\"beds\":%s}"
        .formatted(
            seed,
            flowing(stream),
            json(site(site)),
            json(new GivenDesign(effluent(stream), null, null)),
            json(beds));
  }

  /** The seed and the request; of several streams, the first. */
  public static String of(long seed, WetlandModel.Inputs<CropGrowth> inputs) {
    return of(seed, inputs.climate(), inputs.intakes().get(0).stream(), inputs.beds())
        + " and the valve "
        + json(inputs.diversion())
        + ", streams "
        + inputs.intakes().size();
  }

  private static List<Integer> flowing(WaterStream stream) {
    List<Integer> months = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (stream.volumeM3(month) > 0) {
        months.add(month + 1);
      }
    }
    return months;
  }

  private static SiteDesign site(SiteClimate site) {
    MonthlyNormals normals =
        new MonthlyNormals(
            Months.list(site.airC()),
            null,
            null,
            Months.list(site.solarKWhM2Day()),
            Months.list(site.windMS()),
            null,
            null,
            Months.list(site.dewPointC()),
            Months.list(site.rainMm()));
    return new SiteDesign(
        new ClimateChoice(null, normals),
        FastMath.toDegrees(site.latitudeRad()),
        0.0,
        site.elevationM(),
        null,
        null,
        null,
        null);
  }

  private static GivenDesign.Effluent effluent(WaterStream stream) {
    double volume = stream.annualVolumeM3();
    if (volume <= 0) {
      return null;
    }
    double toMgL = 1000 / volume;
    double organisms = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      organisms += stream.faecalColiformsPer100ML()[month] * stream.volumeM3(month);
    }
    return new GivenDesign.Effluent(
        volume / Months.DAYS_PER_YEAR,
        stream.temperatureC()[0],
        toMgL * Months.sum(stream.bod5Kg()),
        toMgL * stream.annual().codKg(),
        toMgL * Months.sum(stream.suspendedSolidsKg()),
        toMgL * stream.annual().nitrogenKg(),
        toMgL * stream.annual().phosphorusKg(),
        toMgL * stream.annual().potassiumKg(),
        null,
        organisms / volume);
  }

  private static String json(Object value) {
    if (value instanceof Record record) {
      List<String> members = new ArrayList<>();
      for (RecordShape.Field field : RecordShape.of(record.getClass()).fields()) {
        if (field.of(record) != null) {
          members.add("\"" + field.name() + "\":" + json(field.of(record)));
        }
      }
      return "{" + String.join(",", members) + "}";
    }
    if (value instanceof List<?> list) {
      return "[" + String.join(",", list.stream().map(ReadyRequest::json).toList()) + "]";
    }
    if (value instanceof Enum<?> choice) {
      return "\"" + WireName.of(choice) + "\"";
    }
    return value instanceof String text
        ? "\"" + text + "\""
        : String.format(Locale.ROOT, "%s", value);
  }
}
