package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.BuiltInClimate;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.MonthlyNormals;
import org.marshlight.climate.SiteDesign;
import org.marshlight.http.drawing.Series;
import org.marshlight.http.report.Block.Figure;

/** What the place is like: its normals, whichever way the plan names them. */
final class SitePart {

  private SitePart() {}

  static Part of(Sheet sheet, SiteDesign site) {
    MonthlyNormals normals = normals(site.climate());
    List<Block> blocks = new ArrayList<>();
    List<Figure> figures = new ArrayList<>();
    BuiltInClimate station = site.climate().station();
    if (station != null) {
      figures.add(new Figure(sheet.texts().plain("site.station"), station.name(), ""));
    }
    blocks.add(Block.of(null, figures));
    if (normals != null) {
      blocks.add(air(sheet, normals));
      if (normals.horizontalSolarKWhM2Day() != null) {
        blocks.add(
            sheet.months(
                "site-sun",
                "kW.h/(m2.d)",
                "climate",
                List.of(
                    sheet.series(
                        "series.sun", Series.Kind.BAR, normals, "horizontalSolarKWhM2Day")),
                false));
      }
    }
    return Part.of("site", sheet.texts().plain("question.site"), blocks);
  }

  /** The normals that a plan names, directly or by a station; null if it names none of these. */
  static MonthlyNormals normals(ClimateChoice choice) {
    return choice.normals();
  }

  private static Block air(Sheet sheet, MonthlyNormals normals) {
    List<Series> series = new ArrayList<>();
    series.add(sheet.series("series.air-mean", Series.Kind.LINE, normals, "meanAirTemperatureC"));
    if (normals.meanMaxAirTemperatureC() != null) {
      series.add(
          sheet.series("series.air-max", Series.Kind.LINE, normals, "meanMaxAirTemperatureC"));
    }
    if (normals.meanMinAirTemperatureC() != null) {
      series.add(
          sheet.series("series.air-min", Series.Kind.LINE, normals, "meanMinAirTemperatureC"));
    }
    return sheet.months("site-air", "Cel", "climate", series, false);
  }
}
