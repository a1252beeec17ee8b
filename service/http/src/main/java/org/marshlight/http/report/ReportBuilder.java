package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.marshlight.Answer;
import org.marshlight.contract.Notice;
import org.marshlight.contract.WireName;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.http.words.Words;
import org.marshlight.loop.Plan;
import org.marshlight.safety.Caution;

/** Puts an answer and its plan into the words of a report. */
public final class ReportBuilder {

  private ReportBuilder() {}

  /**
   * The report of an answer.
   *
   * @param answer the answer
   * @param plan the plan that it answers
   * @param system system of units
   * @param texts texts in the reader's language
   */
  public static Report of(Answer<PlanEstimate> answer, Plan plan, UnitSystem system, Texts texts) {
    Sheet sheet = new Sheet(new Words(system), texts);
    PlanEstimate estimate = answer.estimate();
    List<Part> parts = parts(sheet, estimate, plan);
    List<Part> annexes = new ArrayList<>();
    annexes.add(PermitPart.of(sheet, estimate, plan));
    annexes.add(PlanPart.of(sheet, plan));
    annexes.add(Limits.of(sheet, estimate));
    annexes.add(Assumed.of(sheet, answer.assumptions()));
    annexes.add(Assumed.sources(sheet, answer.assumptions()));
    if (estimate.working() != null) {
      annexes.add(WorkingPart.of(sheet, estimate.working()));
    }
    annexes.add(Annex.of(sheet, estimate));
    annexes.removeIf(Part::empty);
    return new Report(
        plan.name() == null ? texts.plain("report.no-name") : plan.name(),
        system.wireName(),
        told(sheet, answer.cautions(), true),
        told(sheet, answer.cautions(), false),
        shortly(sheet, estimate),
        WorthPart.cards(sheet, estimate.verdicts()),
        parts,
        answer.notices().stream()
            .sorted(Comparator.comparing(Notice::severity).reversed())
            .map(notice -> Sentence.of(sheet, notice))
            .toList(),
        annexes,
        answer.meta().version(),
        answer.meta().planSha256());
  }

  private static List<Part> parts(Sheet sheet, PlanEstimate estimate, Plan plan) {
    List<Part> parts = new ArrayList<>();
    parts.add(SitePart.of(sheet, plan.site()));
    if (estimate.digester() != null) {
      parts.add(TankParts.load(sheet, estimate.digester()));
      parts.add(TankParts.warmth(sheet, estimate.digester(), plan));
      parts.add(TankParts.gas(sheet, estimate.digester(), plan));
    }
    if (estimate.wetland() != null) {
      parts.add(BedParts.water(sheet, estimate.wetland()));
    }
    if (estimate.crop() != null) {
      parts.add(BedParts.crop(sheet, estimate.crop()));
    }
    if (estimate.ethanol() != null) {
      parts.add(ReturnParts.alcohol(sheet, estimate.ethanol()));
    }
    if (estimate.compost() != null) {
      parts.add(ReturnParts.compost(sheet, estimate.compost()));
    }
    if (estimate.flows() != null) {
      parts.add(FlowsPart.of(sheet, estimate));
      parts.add(FlowsPart.closure(sheet, estimate));
      parts.add(FlowsPart.balances(sheet, estimate));
    }
    decided(sheet, estimate, parts);
    parts.removeIf(Part::empty);
    return parts;
  }

  private static void decided(Sheet sheet, PlanEstimate estimate, List<Part> parts) {
    if (estimate.money() != null) {
      parts.add(MoneyPart.of(sheet, estimate.money()));
    }
    if (estimate.energyReturn() != null) {
      parts.add(ReturnedPart.returned(sheet, estimate.energyReturn()));
    }
    if (estimate.alternatives() != null) {
      parts.add(ReturnedPart.instead(sheet, estimate.alternatives()));
    }
    if (estimate.greenhouseGas() != null) {
      parts.add(WarmingPart.of(sheet, estimate.greenhouseGas()));
    }
    if (estimate.labour() != null) {
      parts.add(BuildingParts.work(sheet, estimate.labour()));
    }
    if (estimate.calendar() != null) {
      parts.add(BuildingParts.calendar(sheet, estimate.calendar()));
    }
    if (estimate.materials() != null) {
      parts.add(BuildingParts.materials(sheet, estimate.materials()));
    }
  }

  private static List<Figure> shortly(Sheet sheet, PlanEstimate estimate) {
    List<Figure> figures = new ArrayList<>();
    if (estimate.digester() != null) {
      var year = estimate.digester().annual();
      figures.add(sheet.figure("short.liquor", year.meanLiquorTemperatureC(), "Cel", "digester"));
      figures.add(sheet.figure("short.gas", year.gasEnergyKWh(), "kW.h", "digester"));
      if (year.cookingDemandMetFraction() != null) {
        figures.add(
            new Figure(
                sheet.texts().plain("short.cooking"),
                Words.digits(100 * year.cookingDemandMetFraction()),
                "%"));
      }
    }
    if (estimate.wetland() != null) {
      figures.add(
          sheet.figure(
              "short.bod", estimate.wetland().annual().effluentBod5MgL(), "mg/L", "wetland"));
    }
    if (estimate.ethanol() != null) {
      figures.add(
          sheet.figure(
              "short.alcohol", estimate.ethanol().annual().netEnergyKWh(), "kW.h", "ethanol"));
    }
    if (estimate.compost() != null) {
      figures.add(
          sheet.figure("short.nitrogen", estimate.compost().annual().nitrogenKg(), "kg", "crop"));
    }
    return figures;
  }

  private static List<Report.Told> told(Sheet sheet, List<Caution> cautions, boolean dangers) {
    return cautions.stream()
        .filter(caution -> (caution.severity() == Caution.Severity.DANGER) == dangers)
        .map(
            caution ->
                new Report.Told(
                    sheet.texts().plain("severity." + WireName.of(caution.severity())),
                    Sentence.hazard(sheet, caution),
                    Sentence.text(sheet, caution)))
        .toList();
  }
}
