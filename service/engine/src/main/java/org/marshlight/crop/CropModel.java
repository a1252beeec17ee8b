package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Party;
import org.marshlight.wetland.BedDesign;

/**
 * The plants of the beds. Stands are made first, the beds are run with them, and what they then
 * tell of their growth becomes the estimate: {@link #stands}, {@code WetlandModel.run}, {@link
 * #outcome}.
 */
public final class CropModel {

  private CropModel() {}

  /**
   * A stand for each bed.
   *
   * @param beds the beds with their defaults filled
   * @param year weather of the site
   * @param set the coefficients
   */
  public static List<CropStand> stands(List<BedDesign> beds, ClimateYear year, CoefficientSet set) {
    List<CropStand> stands = new ArrayList<>();
    for (BedDesign bed : beds) {
      stands.add(CropStand.of(bed, year, set));
    }
    return List.copyOf(stands);
  }

  /**
   * The harvest and its figures.
   *
   * @param stands the stands that were run
   * @param growths what each of them told
   * @param year weather of the site
   * @param humanOrigin whether the beds get human waste
   */
  public static CropOutcome outcome(
      List<CropStand> stands, List<CropGrowth> growths, ClimateYear year, boolean humanOrigin) {
    List<Harvest.Lot> lots = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      CropGrowth growth = growths.get(i);
      lots.add(
          new Harvest.Lot(
              Party.bed(i),
              stands.get(i).bed().plant(),
              growth.organs(),
              growth.starchKg(),
              growth.sugarKg(),
              growth.tops()));
    }
    CropEstimate estimate = CropReport.of(stands, growths);
    return new CropOutcome(
        estimate,
        new Harvest(List.copyOf(lots)),
        CropNotices.of(stands, estimate, year, humanOrigin));
  }

  /**
   * The steps of the first bed's growth on a day in the middle of summer, for a reader to redo by
   * hand.
   *
   * @param stands the stands of the plan
   * @param year weather of the site
   * @param set the coefficients
   */
  public static List<Step> working(List<CropStand> stands, ClimateYear year, CoefficientSet set) {
    return CropWorking.steps(stands.get(0), year, set.bind(CropCoefficients.class));
  }

  /** Day of the year, 1 to 365, on which a summer's middle falls at a site. */
  static int midsummerDay(ClimateYear year) {
    int longest = 0;
    for (int day = 1; day < Months.DAYS_PER_YEAR; day++) {
      if (year.dayLengthH()[day] > year.dayLengthH()[longest]) {
        longest = day;
      }
    }
    return longest + 1;
  }
}
