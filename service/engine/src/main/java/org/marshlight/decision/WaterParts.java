package org.marshlight.decision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Measure;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandEstimate;
import org.marshlight.wetland.WetlandEstimate.Adequacy;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/** Judges the beds by the water that leaves them: all together, and each of several. */
final class WaterParts {

  private final Comparisons basis;
  private final Effects with;
  private final WorkEstimate work;
  private final PartMoney money;
  private final DecisionCoefficients thresholds;

  WaterParts(Comparisons basis, Effects with, WorkEstimate work) {
    this.basis = basis;
    this.with = with;
    this.work = work;
    this.money = new PartMoney(basis, work);
    this.thresholds = basis.set().bind(DecisionCoefficients.class);
  }

  private WetlandEstimate beds() {
    return with.run().wetland().estimate();
  }

  /** All beds together; null without beds. */
  Verdict all() {
    if (with.run().wetland() == null) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.beds(basis.plan()));
    Part part =
        new Part(
            Component.BEDS,
            null,
            with,
            without,
            money.beds(1, with.run()),
            basis,
            work.hoursOf(Component.BEDS));
    unfit(part);
    long overloaded =
        beds().beds().stream()
            .filter(bed -> bed.loading().answer() == Adequacy.INSUFFICIENT)
            .count();
    if (overloaded > 0) {
      part.failing("decision.beds-overloaded", "beds", overloaded);
    }
    long frozen = beds().beds().stream().filter(WaterParts::freezes).count();
    if (frozen > 0) {
      part.failing("decision.beds-freeze", "beds", frozen);
    }
    WaterStream in = with.run().wetland().inflow();
    WaterStream out = with.run().wetland().outflow();
    double removed = removed(Months.sum(in.bod5Kg()), Months.sum(out.bod5Kg()));
    part.because(
        BedRemoval.reason(
            "decision.beds-remove",
            "decision.beds-leave",
            removed,
            removed(in.annual().nitrogenKg(), out.annual().nitrogenKg())));
    part.because(
        "decision.beds-without",
        "withoutBodKg",
        without.outflowBod5Kg(),
        "withoutNitrogenKg",
        without.outflow().nitrogenKg(),
        "withBodKg",
        with.outflowBod5Kg(),
        "withNitrogenKg",
        with.outflow().nitrogenKg());
    int dry = beds().withoutOutflow().size();
    if (dry > 0) {
      part.because("decision.beds-no-outflow", "months", dry);
    }
    double credit = money.absorptionCredit(with.run());
    if (credit > 0) {
      part.because(
          "decision.beds-credited", "credit", credit, "areaM2", beds().soilAbsorption().areaM2());
    }
    part.provided("decision.water-not-for-raw-food");
    return part.by(
        Verdict.Basis.WATER,
        new Measure(removed, thresholds.bedRemovalYes(), thresholds.bedRemovalMarginal(), "1"));
  }

  private void unfit(Part part) {
    int months = Collections.frequency(beds().fitness().monthly(), UseAnswer.UNFIT);
    if (months > 0) {
      part.failing("decision.beds-unfit", "months", months);
    }
  }

  /** Each of several beds; none where there is but one. */
  List<Verdict> each() {
    List<Verdict> verdicts = new ArrayList<>();
    if (with.run().wetland() == null || beds().beds().size() < 2) {
      return verdicts;
    }
    double area = beds().beds().stream().mapToDouble(WetlandEstimate.Bed::areaM2).sum();
    for (int i = 0; i < beds().beds().size(); i++) {
      verdicts.add(one(i, beds().beds().get(i), area));
    }
    return verdicts;
  }

  private Verdict one(int index, WetlandEstimate.Bed bed, double allM2) {
    Effects without = basis.effects(PlanWithout.bed(basis.plan(), index));
    double share = bed.areaM2() / allM2;
    Part part =
        new Part(
            Component.BED,
            bed.name(),
            with,
            without,
            money.beds(share, with.run()),
            basis,
            work.hoursOf(Component.BEDS) * share);
    if (bed.loading().answer() == Adequacy.INSUFFICIENT) {
      part.failing(
          "decision.bed-overloaded",
          "bed",
          bed.name(),
          "loading",
          bed.loading().bod5GM2Day(),
          "limit",
          bed.loading().refuseGM2Day());
    }
    if (freezes(bed)) {
      part.failing(
          "decision.bed-freezes",
          "bed",
          bed.name(),
          "icePercent",
          Part.percent(bed.ice().depthFraction()),
          "limitPercent",
          Part.percent(bed.ice().limitFraction()));
    }
    double bod = removed(without.outflowBod5Kg(), with.outflowBod5Kg());
    double nitrogen = removed(without.outflow().nitrogenKg(), with.outflow().nitrogenKg());
    part.because(
        BedRemoval.reason(
            "decision.bed-takes",
            "decision.bed-leaves",
            bod,
            nitrogen,
            "bed",
            bed.name(),
            "areaM2",
            bed.areaM2()));
    if (without.unfitMonths() != null) {
      part.because(
          "decision.bed-unfit-months",
          "with",
          with.unfitMonths(),
          "without",
          without.unfitMonths());
    }
    return part.by(
        Verdict.Basis.WATER,
        new Measure(
            Math.max(bod, nitrogen), thresholds.oneBedYes(), thresholds.oneBedMarginal(), "1"));
  }

  private static boolean freezes(WetlandEstimate.Bed bed) {
    return bed.ice() != null && bed.ice().blocks();
  }

  /** Beds that nothing reaches take nothing out of it. */
  private static double removed(double in, double out) {
    return in > 0 ? 1 - out / in : 0;
  }
}
