package org.marshlight.wetland;

import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.WaterStream;

/**
 * A year of one bed in its steady state: what stays in its water in a month without outflow joins
 * what comes in the next.
 *
 * @param bed the bed
 * @param inflow what reaches its inlet
 * @param water its water
 * @param warmth its temperatures
 * @param growth the year of its stand
 * @param months what became of the water's matter in each month, at the headline age
 * @param outflow what leaves, with what was led past
 * @param stored what the water holds more at the year's end
 * @param rounds years run until it was steady
 * @param coliformFloor least coliforms that the cap leaves in the outflow, density times m3
 * @param <G> what the stand tells of its growth
 */
record BedYear<G extends StandGrowth>(
    BedSite bed,
    WaterStream inflow,
    BedWater water,
    BedWarmth warmth,
    G growth,
    List<BedMonth> months,
    WaterStream outflow,
    Matter stored,
    int rounds,
    double[] coliformFloor) {

  /** Litter that decays in a month: an even share of the year's, less what is buried. */
  static Matter decayingLitter(BedSite bed, StandGrowth growth, int month) {
    Matter litter = growth.litter();
    return litter
        .minus(buriedLitter(bed, growth))
        .times((double) Months.days(month) / Months.DAYS_PER_YEAR);
  }

  /** Litter of a year that stays in the bed for good; potassium leaches even from that. */
  static Matter buriedLitter(BedSite bed, StandGrowth growth) {
    Matter litter = growth.litter();
    Matter potassium = new Matter(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, litter.potassiumKg());
    return litter.minus(potassium).times(bed.c().buriedLitter());
  }
}
