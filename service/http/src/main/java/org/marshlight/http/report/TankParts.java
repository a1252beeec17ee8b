package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.marshlight.contract.RecordShape;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.http.drawing.Series;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.report.Block.Row;
import org.marshlight.loop.Plan;

/** What goes into the tank, how warm it gets and how much gas it gives. */
final class TankParts {

  private static final String ENERGY = "kW.h";
  private static final String PLACE = "digester";

  private TankParts() {}

  static Part load(Sheet sheet, DigesterEstimate tank) {
    return Part.of(
        "load",
        sheet.texts().plain("question.load"),
        List.of(Block.of(null, all(sheet, tank.load()))));
  }

  static Part warmth(Sheet sheet, DigesterEstimate tank, Plan plan) {
    List<Block> blocks = new ArrayList<>();
    boolean glazed = plan.cover() != null && plan.cover().kind() == CoverKind.GLAZED;
    blocks.add(Block.saying(List.of(sheet.say("warm.in-short", shortly(sheet, tank)))));
    List<Series> lines = new ArrayList<>();
    lines.add(
        sheet.series("series.liquor", Series.Kind.LINE, tank.monthly(), "liquorTemperatureC"));
    lines.add(sheet.series("series.air", Series.Kind.LINE, tank.monthly(), "ambientTemperatureC"));
    lines.add(
        sheet.series(
            glazed ? "series.glass" : "series.surface",
            Series.Kind.LINE,
            tank.monthly(),
            "surfaceTemperatureC"));
    lines.add(sheet.series("series.lid", Series.Kind.LINE, tank.monthly(), "lidTemperatureC"));
    blocks.add(sheet.months("warmth", "Cel", PLACE, lines, false));
    blocks.add(sheet.months("heat", ENERGY, PLACE, flows(sheet, tank), false));
    Block figures =
        Block.of(
            null,
            sheet.figures(
                tank.annual(),
                "meanLiquorTemperatureC",
                "lowestLiquorTemperatureC",
                "highestLiquorTemperatureC",
                "highestLidTemperatureC",
                "lidAboveScaldHours",
                "stagnationTemperatureC",
                "utilisedSunFraction",
                "groundLossWK"));
    return Part.of("warmth", sheet.texts().plain("question.warmth"), blocks, List.of(figures));
  }

  static Part gas(Sheet sheet, DigesterEstimate tank, Plan plan) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.saying(List.of(sheet.say("gas.in-short", shortly(sheet, tank)))));
    blocks.add(sheet.months("gas", ENERGY, PLACE, demand(sheet, tank), false));
    blocks.add(checks(sheet, tank));
    List<Block> more = new ArrayList<>();
    more.add(sheet.months("methane", "m3", "methane", methane(sheet, tank), false));
    List<Figure> figures = new ArrayList<>();
    if (plan.gas() != null) {
      figures.add(sheet.figure("gas.store-holds", storeEnergy(tank), ENERGY, PLACE));
    }
    figures.addAll(
        sheet.figures(
            tank.annual(),
            "gasEnergyKWh",
            "gasUsedKWh",
            "cookingDemandMetFraction",
            "burnerHoursPerDay",
            "longestWithoutGasDays",
            "methaneNm3",
            "methaneDissolvedNm3",
            "methaneLeakedNm3",
            "methaneCeilingNm3",
            "methaneGPerPersonDay",
            "methaneTotalGPerPersonDay",
            "hydraulicRetentionDays",
            "organicLoadingKgM3Day"));
    figures.addAll(
        sheet.figures(
            tank.gas(),
            "methaneFraction",
            "hydrogenSulphidePpm",
            "hydrogenSulphideLowPpm",
            "hydrogenSulphideHighPpm"));
    more.add(Block.of(null, figures));
    more.add(Block.of(sheet.texts().plain("gas.sludge"), all(sheet, tank.sludge())));
    return Part.of("gas", sheet.texts().plain("question.gas"), blocks, more);
  }

  private static List<Series> flows(Sheet sheet, DigesterEstimate tank) {
    return RecordShape.of(DigesterEstimate.HeatFlows.class).fields().stream()
        .map(
            field ->
                sheet.series(
                    "series.heat." + field.name(),
                    Series.Kind.BAR,
                    tank.heatFlowsKWh(),
                    field.name()))
        .toList();
  }

  private static List<Series> demand(Sheet sheet, DigesterEstimate tank) {
    List<Series> series = new ArrayList<>();
    DigesterEstimate.Monthly monthly = tank.monthly();
    series.add(sheet.series("series.gas-used", Series.Kind.BAR, monthly, "gasUsedKWh"));
    series.add(sheet.series("series.gas-surplus", Series.Kind.BAR, monthly, "gasSurplusKWh"));
    series.add(sheet.series("series.gas-made", Series.Kind.LINE, monthly, "gasEnergyKWh"));
    List<Double> asked =
        IntStream.range(0, 12)
            .mapToObj(m -> monthly.gasUsedKWh().get(m) + monthly.gasShortfallKWh().get(m))
            .toList();
    sheet.show(DigesterEstimate.Monthly.class, "gasShortfallKWh");
    series.add(new Series(sheet.texts().plain("series.gas-asked"), Series.Kind.LINE, asked));
    Double store = storeEnergy(tank);
    if (store != null && store > 0) {
      series.add(sheet.level("series.gas-store", store, ENERGY, PLACE));
    }
    return series;
  }

  /** What a full store holds, by the heating value of the year's gas; null without gas. */
  private static Double storeEnergy(DigesterEstimate tank) {
    double methane = tank.annual().methaneNm3();
    return methane > 0
        ? Double.valueOf(tank.gas().storeHoldsNm3() * tank.annual().gasEnergyKWh() / methane)
        : null;
  }

  private static List<Series> methane(Sheet sheet, DigesterEstimate tank) {
    DigesterEstimate.Monthly monthly = tank.monthly();
    return List.of(
        sheet.series("series.methane-store", Series.Kind.BAR, monthly, "methaneNm3"),
        sheet.series("series.methane-dissolved", Series.Kind.BAR, monthly, "methaneDissolvedNm3"),
        sheet.series("series.methane-leaked", Series.Kind.BAR, monthly, "methaneLeakedNm3"));
  }

  private static Block checks(Sheet sheet, DigesterEstimate tank) {
    List<Row> rows =
        tank.stability().stream()
            .map(
                check ->
                    Row.of(
                        sheet.texts().plain(check.kept() ? "check.kept" : "check.broken"),
                        List.of(Sentence.plain(sheet, check.text()))))
            .toList();
    tank.stability()
        .forEach(
            check ->
                sheet.show(
                    check.getClass(),
                    RecordShape.of(check.getClass()).names().toArray(String[]::new)));
    return Block.of(
        sheet.texts().plain("gas.checks"),
        sheet.table(null, List.of("table.check", "table.what"), rows, ""));
  }

  private static Map<String, String> shortly(Sheet sheet, DigesterEstimate tank) {
    DigesterEstimate.Annual year = tank.annual();
    var words = sheet.words();
    Double coldest = tank.monthly().liquorTemperatureC().stream().min(Double::compare).orElse(null);
    return Map.of(
        "mean", words.quantity(year.meanLiquorTemperatureC(), "Cel", PLACE),
        "coldest", words.quantity(coldest, "Cel", PLACE),
        "gas", words.quantity(year.gasEnergyKWh(), ENERGY, PLACE),
        "hours", words.number(year.burnerHoursPerDay(), "h/d", PLACE),
        "dissolved", words.quantity(year.methaneDissolvedNm3(), "m3", "methane"),
        "methane", words.quantity(year.methaneNm3(), "m3", "methane"));
  }

  private static List<Figure> all(Sheet sheet, Record owner) {
    return sheet.figures(owner, RecordShape.of(owner.getClass()).names().toArray(String[]::new));
  }
}
