package org.marshlight.http.page;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.http.words.Texts;

/** The texts that the page's scripts say. */
final class PageTexts {

  private static final String[] KEYS = {
    "page.working",
    "page.worked",
    "page.problems",
    "page.offline",
    "page.busy",
    "page.not-a-plan",
    "page.no-report",
    "page.saved",
    "page.opened",
    "fault.range",
    "fault.number",
    "fault.thousands",
    "fault.missing",
    "fault.one-of",
    "form.kept",
    "sure.progress",
    "sure.begun",
    "sure.offline",
    "matters.changed",
    "sure.stopped",
    "sure.figure",
    "sure.changed",
    "sure.range",
    "sure.least",
    "sure.middle",
    "sure.most",
    "sure.plan",
    "sure.unit",
    "sure.done",
    "odds.title",
    "odds.part",
    "matters.share",
    "matters.number",
    "matters.alone",
    "matters.nothing",
    "matters.done",
    "chart.show-table"
  };

  private static final String[] HEADLINES = {
    "digester.gasEnergyKWh",
    "digester.meanLiquorTemperatureC",
    "digester.cookingDemandMetFraction",
    "wetland.worstMonthBod5MgL",
    "crop.starchKg",
    "ethanol.netEnergyKWh",
    "compost.nitrogenKg",
    "money.expectedNetPresentValue",
    "greenhouseGas.differenceOver100YearsKg"
  };

  private static final String[] FAMILIES = {"headline.", "component.", "answer."};

  private PageTexts() {}

  /** The figures of which a reader can ask what matters. */
  static List<Headline> headlines() {
    return Arrays.stream(HEADLINES).map(id -> new Headline(id, "headline." + id)).toList();
  }

  static Map<String, String> of(Texts texts) {
    Map<String, String> says = new LinkedHashMap<>();
    for (String key : KEYS) {
      says.put(key, texts.plain(key));
    }
    for (String family : FAMILIES) {
      texts.keys(family).forEach(key -> says.put(key, texts.plain(key)));
    }
    return says;
  }

  /**
   * A figure of a study.
   *
   * @param id its name in requests
   * @param key key of its name for people
   */
  record Headline(String id, String key) {}
}
