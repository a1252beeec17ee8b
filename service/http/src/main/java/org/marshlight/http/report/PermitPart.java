package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.WetlandEstimate;

/**
 * The questions that an officer usually asks first, each with what this plan and estimate can say
 * to it, or that it is not given. What nobody has told is never guessed.
 */
final class PermitPart {

  /** What only somebody on the site can tell. */
  private static final List<String> ON_THE_SITE =
      List.of("setbacks", "groundwater", "wells", "percolation", "flood");

  private final Sheet sheet;
  private final List<Row> rows = new ArrayList<>();

  private PermitPart(Sheet sheet) {
    this.sheet = sheet;
  }

  static Part of(Sheet sheet, PlanEstimate estimate, Plan plan) {
    PermitPart part = new PermitPart(sheet);
    part.flow(estimate, plan);
    ON_THE_SITE.forEach(name -> part.row(name, null));
    part.beds(estimate.wetland());
    part.gas(estimate.digester(), plan);
    part.fuel(estimate);
    return Part.of(
        "permit",
        sheet.texts().plain("question.permit"),
        List.of(
            Block.saying(List.of(sheet.texts().html("permit.meaning"))),
            Block.of(
                (String) null,
                sheet.table(null, List.of("table.asked", "table.value"), part.rows, "answers"))));
  }

  private void flow(PlanEstimate estimate, Plan plan) {
    DigesterEstimate tank = estimate.digester();
    row("people", plan.people() == null ? null : count(plan.people().count()));
    row(
        "design-flow",
        estimate.wetland() == null
            ? tank == null ? null : quantity(tank.load().waterLPerDay(), "L/d", "tank")
            : quantity(estimate.wetland().soilAbsorption().designFlowM3Day(), "m3/d", "wetland"));
    row("strength", tank == null ? null : quantity(tank.load().bod5KgPerDay(), "kg/d", "tank"));
    row(
        "tank-volume",
        plan.tank() == null || plan.tank().liquidVolumeM3() == null
            ? null
            : quantity(plan.tank().liquidVolumeM3(), "m3", "tank"));
    row(
        "retention",
        tank == null || tank.annual().hydraulicRetentionDays() == null
            ? null
            : quantity(tank.annual().hydraulicRetentionDays(), "d", "tank"));
    row(
        "desludging",
        tank == null ? null : quantity((double) tank.sludge().intervalYears(), "a", "tank"));
  }

  private void beds(WetlandEstimate beds) {
    if (beds == null) {
      row("soil-loading", null);
      row("soil-area", null);
      row("reserve", null);
      return;
    }
    WetlandEstimate.SoilAbsorption soil = beds.soilAbsorption();
    double heaviest =
        beds.beds().stream().mapToDouble(bed -> bed.loading().bod5GM2Day()).max().orElse(0);
    row("bed-loading", quantity(heaviest, "g/(m2.d)", "wetland"));
    row(
        "outflow-use",
        sheet
            .texts()
            .plain(
                "permit.use",
                Map.of(
                    "use", Words.text(beds.fitness().use()),
                    "answer",
                        sheet
                            .texts()
                            .plain(
                                "fitness."
                                    + org.marshlight.contract.WireName.of(
                                        beds.fitness().year())))));
    row("soil-loading", quantity(soil.acceptanceLM2Day(), "L/(m2.d)", "wetland"));
    row("soil-area", soil.areaM2() == null ? null : quantity(soil.areaM2(), "m2", "wetland"));
    row("reserve", soil.reserveM2() == null ? null : quantity(soil.reserveM2(), "m2", "wetland"));
    sheet.show(
        WetlandEstimate.SoilAbsorption.class,
        "designFlowM3Day",
        "acceptanceLM2Day",
        "areaM2",
        "reserveM2");
  }

  private void gas(DigesterEstimate tank, Plan plan) {
    if (tank == null) {
      return;
    }
    row(
        "gas-made",
        quantity(
            tank.monthly().meteredGasM3().stream().mapToDouble(Double::doubleValue).sum() / 365,
            "m3/d",
            "gas"));
    row(
        "gas-volume",
        plan.gas() == null || plan.gas().storeM3() == null
            ? null
            : quantity(plan.gas().storeM3(), "m3", "gas"));
    row("gas-held", quantity(tank.gas().storeHoldsNm3(), "m3", "methane"));
    row(
        "gas-pressure",
        plan.gas() == null || plan.gas().pressureKPa() == null
            ? null
            : quantity(plan.gas().pressureKPa(), "kPa", "gas"));
    sheet.show(DigesterEstimate.Gas.class, "storeHoldsNm3");
    sheet.show(DigesterEstimate.Monthly.class, "meteredGasM3");
  }

  private void fuel(PlanEstimate estimate) {
    if (estimate.ethanol() != null) {
      row("alcohol", quantity(estimate.ethanol().still().productL(), "L", "ethanol"));
      row("licence", null);
    }
  }

  private void row(String name, String value) {
    rows.add(
        Row.of(
            sheet.texts().plain("permit." + name),
            List.of(value == null ? sheet.texts().plain("permit.not-given") : value)));
  }

  private String quantity(Double value, String ucum, String place) {
    return sheet.words().quantity(value, ucum, place);
  }

  private static String count(Integer count) {
    return count == null ? null : count.toString();
  }
}
