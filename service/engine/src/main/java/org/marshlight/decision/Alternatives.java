package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;
import org.marshlight.economy.PlanPart;
import org.marshlight.evidence.Catalogues;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;

/** What the same glass, money or wastes would give otherwise. */
final class Alternatives {

  private final Comparisons basis;
  private final Effects with;
  private final Sizes sizes;
  private final AlternativeCoefficients c;
  private final List<Alternative> found = new ArrayList<>();

  private Alternatives(Comparisons basis, Effects with, Sizes sizes) {
    this.basis = basis;
    this.with = with;
    this.sizes = sizes;
    this.c = basis.set().bind(AlternativeCoefficients.class);
  }

  /** The alternatives to parts that a plan has. */
  static List<Alternative> of(Comparisons basis, Effects with, Sizes sizes) {
    Alternatives alternatives = new Alternatives(basis, with, sizes);
    if (with.run().digester() == null) {
      return List.of();
    }
    if (sizes.glazed()) {
      alternatives.sameGlass();
      if (sizes.gas() != null) {
        alternatives.insulated();
        alternatives.fed();
      }
    }
    if (basis.plan().feeds() != null
        && basis.plan().feeds().stream().anyMatch(feed -> feed.freshKgPerDay() > 0)) {
      alternatives.composted();
    }
    return List.copyOf(alternatives.found);
  }

  /** Heat of a square metre of solar water heater in place of the glass, a year. */
  static double waterHeaterKWhM2(Comparisons basis, Sizes sizes) {
    return basis.sunOnGlassKWhM2(sizes)
        * basis.set().bind(AlternativeCoefficients.class).waterHeaterEfficiency();
  }

  private Effects underEarth() {
    return basis.effects(PlanWithout.glass(basis.plan()));
  }

  private double glassGainKWh() {
    return with.service().annualUsefulKWh() - underEarth().service().annualUsefulKWh();
  }

  private void sameGlass() {
    double gain = glassGainKWh();
    double sun = basis.sunOnGlassKWhM2(sizes);
    double heater = sun * c.waterHeaterEfficiency();
    found.add(
        Alternative.of(
            "decision.instead-water-heater",
            heater * sizes.glassM2(),
            gain,
            forTheMoney(heater, basis.money().waterHeaterPerM2()),
            "glassM2",
            sizes.glassM2(),
            "sunKWhM2",
            sun,
            "heaterKWh",
            heater * sizes.glassM2(),
            "gainKWh",
            gain));
    double loss =
        Photovoltaics.jointLoss(
            c.soiling(),
            c.shading(),
            c.mismatch(),
            c.wiring(),
            c.connections(),
            c.lightInduced(),
            c.nameplate(),
            c.availability());
    double module =
        Photovoltaics.yieldKWhM2(sun, c.moduleEfficiency(), loss, c.inverterEfficiency());
    found.add(
        Alternative.of(
            "decision.instead-modules",
            module * sizes.glassM2(),
            gain,
            forTheMoney(module, basis.money().modulePerM2()),
            "glassM2",
            sizes.glassM2(),
            "moduleKWh",
            module * sizes.glassM2(),
            "gainKWh",
            gain));
  }

  /** What the cost of the cover would buy of something. */
  private Double forTheMoney(double kWhPerM2, Double perM2) {
    Double cost =
        basis.money().capital() == null ? null : basis.money().capital().of(PlanPart.COVER);
    return cost == null || perM2 == null ? null : Double.valueOf(cost / perM2 * kWhPerM2);
  }

  private void insulated() {
    Plan changed = PlanInstead.insulation(basis.plan(), sizes.tank(), c.insulationM2KW());
    Effects instead = Effects.of(basis, changed, basis.tank(changed));
    double more = instead.service().annualUsefulKWh() - underEarth().service().annualUsefulKWh();
    found.add(
        Alternative.of(
            "decision.instead-insulation",
            more,
            glassGainKWh(),
            null,
            "resistanceM2KW",
            c.insulationM2KW(),
            "gainKWh",
            more,
            "glassKWh",
            glassGainKWh(),
            "liquorC",
            instead.run().digester().estimate().annual().meanLiquorTemperatureC()));
  }

  private void fed() {
    double scraps = Math.max(1, basis.people()) * c.scrapsKgPerDay();
    Plan changed = PlanInstead.feeding(basis.plan(), c.moreFeeding(), scraps);
    if (!PlanCheck.faults(changed).isEmpty()) {
      return;
    }
    Effects instead = Effects.of(basis, changed, basis.tank(changed));
    double more = instead.service().annualUsefulKWh() - underEarth().service().annualUsefulKWh();
    boolean fedAlready =
        basis.plan().feeds() != null
            && basis.plan().feeds().stream().anyMatch(feed -> feed.freshKgPerDay() > 0);
    if (fedAlready) {
      found.add(
          Alternative.of(
              "decision.instead-feeding",
              more,
              glassGainKWh(),
              null,
              "morePercent",
              Part.percent(c.moreFeeding()),
              "gainKWh",
              more,
              "glassKWh",
              glassGainKWh()));
    } else {
      found.add(
          Alternative.of(
              "decision.instead-scraps",
              more,
              glassGainKWh(),
              null,
              "scrapsKg",
              scraps,
              "gainKWh",
              more,
              "glassKWh",
              glassGainKWh()));
    }
  }

  private void composted() {
    Plan changed = PlanInstead.composting(basis.plan());
    List<FeedDesign> left = PlanInstead.notComposted(basis.plan());
    if (left.size() == basis.plan().feeds().size()) {
      return;
    }
    Effects instead =
        Effects.of(basis, changed, basis.run(changed), WasteElsewhere.ofFeeds(left, basis.set()));
    double lost = with.service().annualUsefulKWh() - instead.service().annualUsefulKWh();
    found.add(
        Alternative.of(
            left.isEmpty() ? "decision.instead-composting" : "decision.instead-composting-some",
            null,
            lost,
            null,
            "others",
            otherWays(left),
            "nitrogenKg",
            instead.land().nitrogenKg() - with.land().nitrogenKg(),
            "phosphorusKg",
            instead.land().phosphorusKg() - with.land().phosphorusKg(),
            "potassiumKg",
            instead.land().potassiumKg() - with.land().potassiumKg(),
            "lostKWh",
            lost,
            "over100Kg",
            instead.gases().over100YearsKg() - with.gases().over100YearsKg()));
  }

  /** Names of wastes, each with where it goes without the tank. */
  private String otherWays(List<FeedDesign> feeds) {
    FeedFates fates =
        new FeedFates(WasteElsewhere.ofFeeds(feeds, basis.set()), basis.baseline(), basis.set());
    return feeds.stream()
        .map(FeedDesign::feed)
        .distinct()
        .map(
            feed ->
                Sentences.text(
                    "decision.goes-to-" + WireName.of(fates.of(feed)),
                    Params.of("waste", name(feed))))
        .collect(Collectors.joining(", "));
  }

  private static String name(String feed) {
    return Catalogues.standard().find("feeds", feed).orElseThrow().name();
  }
}
