package org.marshlight.crop;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.WetlandModel;

/**
 * A drawn row of beds as the request that a client would send, for a failing test to print. A
 * stream that stops in some months is written by its first month that flows.
 */
public final class BedRequest {

  private BedRequest() {}

  public static String of(WetlandModel.Inputs<?> inputs) {
    return of(inputs.climate(), inputs.intakes().get(0).stream(), inputs.beds());
  }

  public static String of(SiteClimate site, WaterStream stream, List<BedDesign> beds) {
    return "{\"site\": "
        + site(site)
        + ", \"beds\": ["
        + beds.stream().map(BedRequest::bed).collect(Collectors.joining(", "))
        + "]"
        + given(stream)
        + "}";
  }

  private static String site(SiteClimate site) {
    return "{\"climate\": {\"monthly\": {\"meanAirTemperatureC\": %s, \"horizontalSolarKWhM2Day\": %s, "
            .formatted(list(site.airC()), list(site.solarKWhM2Day()))
        + "\"windMS\": %s, \"windHeightM\": 10.0, \"relativeHumidityPercent\": %s, \"rainMm\": %s}}, "
            .formatted(list(Months.constant(2)), list(Months.constant(70)), list(site.rainMm()))
        + "\"latitudeDeg\": %s, \"longitudeDeg\": 0.0, \"elevationM\": 100.0, \"soil\": \"moist-loam\"}"
            .formatted(Math.toDegrees(site.latitudeRad()));
  }

  private static String bed(BedDesign bed) {
    return RecordShape.of(BedDesign.class).fields().stream()
        .filter(field -> field.of(bed) != null)
        .map(field -> "\"" + field.name() + "\": " + value(field.of(bed)))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String value(Object value) {
    if (value instanceof Enum<?> choice) {
      return "\"" + WireName.of(choice) + "\"";
    }
    return value instanceof String ? "\"" + value + "\"" : value.toString();
  }

  private static String given(WaterStream stream) {
    for (int month = 0; month < Months.COUNT; month++) {
      double volume = stream.volumeM3(month);
      if (volume > 0) {
        return (", \"given\": {\"effluent\": {\"flowM3Day\": %s, \"temperatureC\": %s, "
                + "\"bod5MgL\": %s, \"codMgL\": %s, \"suspendedSolidsMgL\": %s, "
                + "\"totalNitrogenMgL\": %s, \"totalPhosphorusMgL\": %s, \"potassiumMgL\": %s, "
                + "\"faecalColiformsPer100ML\": %s}}")
            .formatted(
                volume / Months.days(month),
                stream.temperatureC()[month],
                1000 * stream.bod5Kg()[month] / volume,
                1000 * stream.monthly().get(month).codKg() / volume,
                1000 * stream.suspendedSolidsKg()[month] / volume,
                1000 * stream.monthly().get(month).nitrogenKg() / volume,
                1000 * stream.monthly().get(month).phosphorusKg() / volume,
                1000 * stream.monthly().get(month).potassiumKg() / volume,
                stream.faecalColiformsPer100ML()[month]);
      }
    }
    return "";
  }

  private static String list(double[] values) {
    return Arrays.toString(values);
  }
}
