package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SiteClimate;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;

/**
 * A site's weather, made once for every run of plans that share site and coefficients.
 *
 * @param year the hourly year
 * @param assumptions what was filled
 * @param notices remarks on the climate
 */
public record PreparedSite(ClimateYear year, List<Assumption> assumptions, List<Notice> notices) {

  /** Prepares the site of a legal plan. */
  public static PreparedSite of(Plan plan, CoefficientSet set) {
    Defaults defaults = new Defaults(set);
    SiteDesign site = defaults.fill(plan.site(), "/site");
    List<Notice> notices = new ArrayList<>();
    SiteClimate climate = ClimateModel.prepare(site, defaults, set, notices);
    ClimateYear year =
        site.hours() == null
            ? ClimateYear.of(climate)
            : ClimateYear.of(climate, site.hours(), longitudeDeg(site));
    return new PreparedSite(year, defaults.assumptions(), List.copyOf(notices));
  }

  /** Longitude of a site that has one, its own or its station's; NaN if it has none. */
  static double longitudeDeg(SiteDesign site) {
    if (site.longitudeDeg() != null) {
      return site.longitudeDeg();
    }
    return site.climate().id() == null
        ? Double.NaN
        : BuiltInClimates.standard().find(site.climate().id()).orElseThrow().longitudeDeg();
  }
}
