package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import org.marshlight.decision.PlanEstimate;

/** What the models do not know, so far as it concerns the plan. */
final class Limits {

  private Limits() {}

  static Part of(Sheet sheet, PlanEstimate estimate) {
    List<RawString> limits = new ArrayList<>();
    add(sheet, limits, "general");
    add(sheet, limits, "climate");
    if (estimate.digester() != null) {
      add(sheet, limits, "tank");
      add(sheet, limits, "gas");
    }
    if (estimate.wetland() != null) {
      add(sheet, limits, "beds");
    }
    if (estimate.crop() != null) {
      add(sheet, limits, "crop");
    }
    if (estimate.ethanol() != null) {
      add(sheet, limits, "alcohol");
    }
    if (estimate.compost() != null) {
      add(sheet, limits, "compost");
    }
    add(sheet, limits, "ground");
    return Part.of("limits", sheet.texts().plain("question.limits"), List.of(Block.saying(limits)));
  }

  private static void add(Sheet sheet, List<RawString> limits, String name) {
    limits.add(sheet.texts().html("limits." + name));
  }
}
