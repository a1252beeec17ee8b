package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.HoursDesign;
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
    return of(plan, set, null);
  }

  /**
   * Prepares the site of a legal plan.
   *
   * @param plan the plan
   * @param set its coefficients
   * @param near another site, whose weather is taken over where it is the same; null if there is
   *     none
   */
  public static PreparedSite of(Plan plan, CoefficientSet set, PreparedSite near) {
    Defaults defaults = new Defaults(set);
    SiteDesign site = defaults.fill(plan.site(), "/site");
    List<Notice> notices = new ArrayList<>();
    SiteClimate climate = ClimateModel.prepare(site, defaults, set, notices);
    return new PreparedSite(
        year(climate, site, near), defaults.assumptions(), List.copyOf(notices));
  }

  private static ClimateYear year(SiteClimate climate, SiteDesign site, PreparedSite near) {
    HoursDesign hours = site.hours();
    double longitude = hours == null ? Double.NaN : longitudeDeg(site);
    ClimateYear shared = near == null ? null : near.year().over(climate, hours, longitude);
    if (shared != null) {
      return shared;
    }
    return hours == null ? ClimateYear.of(climate) : ClimateYear.of(climate, hours, longitude);
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
