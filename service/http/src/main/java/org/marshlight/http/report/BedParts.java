package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.RecordShape;
import org.marshlight.crop.CropEstimate;
import org.marshlight.http.drawing.Series;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;
import org.marshlight.wetland.WetlandEstimate;

/** How clean the water gets and what grows. */
final class BedParts {

  /** The monthly figure that each parameter of fitness judges. */
  private static final Map<String, String> JUDGED =
      Map.of(
          "bod5", "effluentBod5MgL",
          "solids", "effluentSuspendedSolidsMgL",
          "nitrogen", "effluentTotalNitrogenMgL",
          "phosphorus", "effluentTotalPhosphorusMgL",
          "coliforms", "effluentFaecalColiformsPer100ML");

  private static final String COLIFORMS = "coliforms";

  private BedParts() {}

  static Part water(Sheet sheet, WetlandEstimate beds) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.saying(List.of(sheet.say("water.in-short", shortly(sheet, beds)))));
    for (WetlandEstimate.UseVerdict judged : beds.fitness().parameters()) {
      if (JUDGED.containsKey(judged.parameter())) {
        blocks.add(against(sheet, beds, judged));
      }
    }
    blocks.add(water(sheet, beds.monthly()));
    blocks.add(fitness(sheet, beds));
    blocks.add(Block.of(sheet.texts().plain("water.loading"), loading(sheet, beds)));
    List<Block> more = new ArrayList<>();
    more.add(
        Block.of(
            null,
            sheet.figures(
                beds.annual(),
                "inflowM3",
                "outflowM3",
                "effluentBod5MgL",
                "effluentSuspendedSolidsMgL",
                "effluentTotalNitrogenMgL",
                "effluentTotalPhosphorusMgL",
                "effluentPotassiumMgL",
                "effluentFaecalColiformsPer100ML",
                "bod5RemovedFraction",
                "totalNitrogenRemovedFraction",
                "totalPhosphorusRemovedFraction",
                "coliformLogRemoval",
                "methaneKg")));
    more.add(
        Block.of(
            sheet.texts().plain("water.rules"),
            sheet.grid(null, beds.sizingRules(), "text", "areaM2", "met")));
    sheet.show(WetlandEstimate.SizingRule.class, "code", "kind", "source");
    return Part.of("water", sheet.texts().plain("question.water"), blocks, more);
  }

  static Part crop(Sheet sheet, CropEstimate crop) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        sheet.months(
            "crop",
            "kg",
            "crop",
            List.of(
                sheet.series("series.tops", Series.Kind.LINE, crop.monthly(), "topsDryKg"),
                sheet.series(
                    "series.underground", Series.Kind.LINE, crop.monthly(), "undergroundDryKg")),
            false));
    blocks.add(
        Block.of(null, sheet.figures(crop.annual(), "storageOrganDryKg", "starchKg", "topsDryKg")));
    List<Block> more = new ArrayList<>();
    more.add(
        Block.of(
            null,
            sheet.figures(
                crop.annual(),
                RecordShape.of(CropEstimate.Annual.class).names().stream()
                    .filter(name -> !name.matches("storageOrganDryKg|starchKg|topsDryKg"))
                    .toArray(String[]::new))));
    more.add(
        Block.of(
            sheet.texts().plain("crop.beds"),
            sheet.grid(
                null,
                crop.beds(),
                "name",
                "plant",
                "storageOrganDryKg",
                "starchKg",
                "topsDryKg",
                "harvestMonth",
                "harvestedFraction",
                "sustainableFraction",
                "limit")));
    return Part.of("crop", sheet.texts().plain("question.crop"), blocks, more);
  }

  private static Block against(
      Sheet sheet, WetlandEstimate beds, WetlandEstimate.UseVerdict judged) {
    String name = judged.parameter();
    List<Series> series = new ArrayList<>();
    series.add(sheet.series("series.outflow", Series.Kind.LINE, beds.monthly(), JUDGED.get(name)));
    series.add(sheet.level("series.strict", judged.strictLimit(), judged.unit(), "wetland"));
    if (judged.lenientLimit() != judged.strictLimit()) {
      series.add(sheet.level("series.lenient", judged.lenientLimit(), judged.unit(), "wetland"));
    }
    return sheet.months("water-" + name, judged.unit(), "wetland", series, name.equals(COLIFORMS));
  }

  private static Block water(Sheet sheet, WetlandEstimate.Monthly monthly) {
    return sheet.months(
        "water",
        "m3",
        "wetland",
        List.of(
            sheet.series("series.inflow", Series.Kind.LINE, monthly, "inflowM3"),
            sheet.series("series.outflow-water", Series.Kind.LINE, monthly, "outflowM3"),
            sheet.series("series.rain", Series.Kind.LINE, monthly, "rainM3"),
            sheet.series(
                "series.evapotranspiration", Series.Kind.LINE, monthly, "evapotranspirationM3")),
        false);
  }

  /** Each parameter in each month. */
  private static Block fitness(Sheet sheet, WetlandEstimate beds) {
    List<String> heads = new ArrayList<>();
    heads.add(sheet.texts().plain("table.parameter"));
    heads.addAll(sheet.monthNames());
    List<Row> rows = new ArrayList<>();
    for (WetlandEstimate.UseVerdict judged : beds.fitness().parameters()) {
      rows.add(
          Row.of(
              sheet.texts().plain("parameter." + judged.parameter()),
              judged.monthly().stream().map(Words::text).toList()));
    }
    sheet.show(
        WetlandEstimate.UseVerdict.class,
        RecordShape.of(WetlandEstimate.UseVerdict.class).names().toArray(String[]::new));
    sheet.show(WetlandEstimate.Fitness.class, "use", "monthly", "year");
    return Block.of(
        sheet.texts().plain("water.fitness", Map.of("use", Words.text(beds.fitness().use()))),
        new Block.Table(null, heads, rows, "months"));
  }

  private static Block.Table loading(Sheet sheet, WetlandEstimate beds) {
    List<Row> rows = new ArrayList<>();
    for (WetlandEstimate.Bed bed : beds.beds()) {
      WetlandEstimate.Loading loading = bed.loading();
      String unit = "g/(m2.d)";
      rows.add(
          Row.of(
              sheet.texts().plain("party.bed", Map.of("number", bed.name().replace("bed-", ""))),
              List.of(
                  Words.text(bed.kind()),
                  sheet.words().quantity(bed.areaM2(), "m2", "wetland"),
                  sheet.words().quantity(loading.bod5GM2Day(), unit, "wetland"),
                  sheet.words().quantity(loading.warnGM2Day(), unit, "wetland"),
                  sheet.words().quantity(loading.retentionDays(), "d", "wetland"),
                  Words.text(loading.answer()))));
    }
    sheet.show(
        WetlandEstimate.Loading.class, "bod5GM2Day", "warnGM2Day", "retentionDays", "answer");
    sheet.show(WetlandEstimate.Bed.class, "name", "kind", "areaM2");
    return sheet.table(
        null,
        List.of(
            "table.bed",
            "table.kind",
            "table.area",
            "table.loading",
            "table.loading-limit",
            "table.retention",
            "table.answer"),
        rows,
        "");
  }

  private static Map<String, String> shortly(Sheet sheet, WetlandEstimate beds) {
    return Map.of(
        "bod",
        sheet.words().quantity(beds.annual().effluentBod5MgL(), "mg/L", "wetland"),
        "nitrogen",
        sheet.words().quantity(beds.annual().effluentTotalNitrogenMgL(), "mg/L", "wetland"),
        "use",
        Words.text(beds.fitness().use()),
        "answer",
        sheet
            .texts()
            .plain("fitness." + org.marshlight.contract.WireName.of(beds.fitness().year())));
  }
}
