package org.marshlight.loop;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.WireName;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.Coefficient;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Distribution;
import org.marshlight.feed.FeedDesign;
import org.marshlight.wetland.BedDesign;

/**
 * The coefficients that a run rests on: those that the models of its stages read and that are not
 * fixed, of catalogues only the items that the plan names, and all that the plan set itself.
 */
public final class CoefficientsRead {

  private CoefficientsRead() {}

  /**
   * The coefficients that are not fixed of all models of some packages, catalogues left out; what a
   * plan set itself is told with the chain.
   *
   * @param packages last names of packages
   */
  public static List<Assumption> of(List<String> packages, CoefficientSet set) {
    Set<String> ids = ids(packages, Map.of());
    return set.book().rows().stream()
        .filter(row -> ids.contains(row.id()) && row.distribution() != Distribution.FIXED)
        .filter(row -> !set.isOverridden(row.id()))
        .map(row -> assumption(row, set.value(row.id()), false))
        .toList();
  }

  static List<Assumption> of(ResolvedPlan plan, StagesToRun stages, CoefficientSet set) {
    Set<String> ids = ids(packages(stages), items(plan, stages));
    List<Assumption> assumptions = new ArrayList<>();
    for (CoefficientRow row : set.book().rows()) {
      boolean overridden = set.isOverridden(row.id());
      if (overridden || (ids.contains(row.id()) && row.distribution() != Distribution.FIXED)) {
        assumptions.add(assumption(row, set.value(row.id()), overridden));
      }
    }
    return List.copyOf(assumptions);
  }

  private static Set<String> ids(List<String> packages, Map<String, Collection<String>> items) {
    Set<String> ids = new LinkedHashSet<>();
    for (String packageName : packages) {
      for (Class<? extends Record> type : CoefficientBook.recordsOf(packageName)) {
        CatalogueRow row = type.getAnnotation(CatalogueRow.class);
        for (RecordComponent component : type.getRecordComponents()) {
          String name = component.getAnnotation(Coefficient.class).value();
          if (row == null) {
            ids.add(name);
          } else {
            for (String item : items.getOrDefault(row.value(), List.of())) {
              ids.add(row.value() + "." + item + "." + name);
            }
          }
        }
      }
    }
    return ids;
  }

  private static Assumption assumption(CoefficientRow row, double value, boolean overridden) {
    return new Assumption(
        overridden ? "override" : "coefficient",
        row.id(),
        null,
        row.note(),
        value,
        row.unit(),
        overridden ? "plan" : row.source(),
        overridden ? "given" : row.mark());
  }

  private static List<String> packages(StagesToRun stages) {
    List<String> packages = new ArrayList<>(List.of("climate"));
    if (stages.tank()) {
      packages.add("feed");
      packages.add("digester");
    }
    if (stages.beds()) {
      packages.add("wetland");
      packages.add("crop");
    }
    if (stages.fuel()) {
      packages.add("ethanol");
    }
    if (stages.heap()) {
      packages.add("compost");
    }
    return packages;
  }

  /** Items of catalogues that the plan names, by catalogue. */
  private static Map<String, Collection<String>> items(ResolvedPlan plan, StagesToRun stages) {
    Map<String, Collection<String>> items = new LinkedHashMap<>();
    items.put("soils", List.of(plan.site().soil()));
    items.put("feeds", plan.feeds().stream().map(FeedDesign::feed).toList());
    if (plan.people() != null) {
      items.put("personal-streams", Catalogues.standard().ids("personal-streams"));
    }
    items.put("plants", plan.beds().stream().map(BedDesign::plant).toList());
    items.put("media", plan.beds().stream().map(BedDesign::medium).toList());
    if (stages.fuel()) {
      items.put("fuels", List.of(plan.fuel().heat(), HeatSource.ELECTRICITY));
      items.put("additives", Catalogues.standard().ids("additives"));
    }
    if (stages.heap()) {
      items.put("compost-methods", List.of(WireName.of(plan.compost().method())));
      if (plan.compost().ingredients() != null) {
        items.put(
            "ingredients",
            plan.compost().ingredients().stream().map(IngredientDesign::ingredient).toList());
      }
    }
    return items;
  }
}
