package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.WireName;
import org.marshlight.decision.Alternative;
import org.marshlight.decision.EnergyReturnEstimate;
import org.marshlight.http.drawing.BarList.Bar;
import org.marshlight.http.report.Block.Row;

/** Energy that comes back for the energy that is spent, and what else would give energy. */
final class ReturnedPart {

  private ReturnedPart() {}

  static Part returned(Sheet sheet, EnergyReturnEstimate energy) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        sheet.bars(
            "returned",
            "kW.h",
            "digester",
            List.of(
                new Bar(sheet.texts().plain("bar.returned-gas"), energy.gasKWh(), 0),
                new Bar(sheet.texts().plain("bar.returned-alcohol"), energy.alcoholKWh(), 2),
                new Bar(sheet.texts().plain("bar.spent-running"), energy.operationKWh(), 1),
                new Bar(
                    sheet.texts().plain("bar.spent-building"), energy.embodiedKWhPerYear(), 3))));
    sheet.show(
        EnergyReturnEstimate.class, "gasKWh", "alcoholKWh", "operationKWh", "embodiedKWhPerYear");
    blocks.add(
        Block.of(null, sheet.figures(energy, "operationRatio", "ratio", "netKWh", "paybackYears")));
    List<Row> parts =
        energy.parts().stream()
            .map(
                part ->
                    Row.of(
                        sheet.texts().plain("field.money.capital." + WireName.of(part.part())),
                        List.of(sheet.words().quantity(part.embodiedKWh(), "kW.h", "digester"))))
            .toList();
    sheet.show(EnergyReturnEstimate.Embodied.class, "part", "embodiedKWh");
    blocks.add(
        Block.of(
            sheet.texts().plain("returned.parts"),
            sheet.table(null, List.of("table.what", "table.amount"), parts, "")));
    return Part.of("returned", sheet.texts().plain("question.returned"), blocks);
  }

  static Part instead(Sheet sheet, List<Alternative> alternatives) {
    sheet.show(
        Alternative.class, "text", "energyKWh", "insteadOfKWh", "sameMoneyKWh", "code", "params");
    return Part.of(
        "instead",
        sheet.texts().plain("question.instead"),
        List.of(
            Block.saying(
                alternatives.stream()
                    .map(a -> Sentence.coded(sheet, a.code(), a.params(), a.text()))
                    .toList())));
  }
}
