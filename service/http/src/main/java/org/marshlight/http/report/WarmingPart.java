package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.WireName;
import org.marshlight.decision.GreenhouseGasEstimate;
import org.marshlight.decision.GreenhouseGasEstimate.Weight;
import org.marshlight.http.drawing.BarList.Bar;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;

/** Whether the plan warms the climate more or less than what is there now. */
final class WarmingPart {

  private WarmingPart() {}

  static Part of(Sheet sheet, GreenhouseGasEstimate gases) {
    List<Block> blocks = new ArrayList<>();
    String key = gases.difference().over100YearsKg() < 0 ? "gases.better" : "gases.worse";
    blocks.add(
        Block.saying(
            List.of(
                sheet.say(
                    key,
                    Map.of(
                        "present",
                        kg(sheet, gases.present().over100YearsKg()),
                        "plan",
                        kg(sheet, gases.plan().over100YearsKg()),
                        "difference",
                        kg(sheet, Math.abs(gases.difference().over100YearsKg())))))));
    blocks.add(
        sheet.bars(
            "gases",
            "kg",
            "crop",
            List.of(
                bar(sheet, "bar.present-100", gases.present().over100YearsKg(), 0),
                bar(sheet, "bar.plan-100", gases.plan().over100YearsKg(), 1),
                bar(sheet, "bar.present-20", gases.present().over20YearsKg(), 0),
                bar(sheet, "bar.plan-20", gases.plan().over20YearsKg(), 1))));
    blocks.add(
        Block.of(
            null,
            sheet.figures(
                gases,
                "sewageWithout",
                "displacedFuel",
                "leakFraction",
                "breakEvenLeak100",
                "breakEvenLeak20")));
    blocks.add(Block.of(sheet.texts().plain("gases.lines"), lines(sheet, gases)));
    sheet.show(
        GreenhouseGasEstimate.Line.class,
        "side",
        "text",
        "carbonDioxideKg",
        "methaneKg",
        "nitrousOxideKg");
    sheet.show(Weight.class, "over100YearsKg", "over20YearsKg");
    return Part.of("gases", sheet.texts().plain("question.gases"), blocks);
  }

  private static Block.Table lines(Sheet sheet, GreenhouseGasEstimate gases) {
    List<Row> rows =
        gases.lines().stream()
            .map(
                line ->
                    Row.of(
                        Sentence.plain(sheet, line.text()),
                        List.of(
                            sheet.texts().plain("gases.side." + WireName.of(line.side())),
                            kg(sheet, line.carbonDioxideKg()),
                            kg(sheet, line.methaneKg()),
                            kg(sheet, line.nitrousOxideKg()),
                            kg(sheet, line.weight().over100YearsKg()))))
            .toList();
    return sheet.table(
        null,
        List.of(
            "table.what",
            "gases.side",
            "gases.carbon-dioxide",
            "gases.methane",
            "gases.nitrous-oxide",
            "gases.weight"),
        rows,
        "");
  }

  private static Bar bar(Sheet sheet, String key, double kg, int style) {
    double shown = sheet.amount(kg, "kg", "crop");
    return new Bar(sheet.texts().plain(key), shown, style);
  }

  private static String kg(Sheet sheet, double value) {
    return value == 0 ? Words.digits(0) : sheet.words().quantity(value, "kg", "crop");
  }
}
