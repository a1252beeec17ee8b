package org.marshlight.wetland;

import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.feed.Account;
import org.marshlight.feed.WaterStream;

/**
 * What the beds give to the rest of the loop.
 *
 * @param estimate the figures
 * @param inflow what enters the first bed, wherever it comes from; without what was sent past
 * @param outflow what leaves the last bed
 * @param diverted what a valve sent past the beds into the soil
 * @param accounts books of the valve, if there is one, and of each bed
 * @param growths the year of each stand
 * @param notices remarks
 * @param <G> what stands tell of their growth
 */
public record WetlandOutcome<G extends StandGrowth>(
    WetlandEstimate estimate,
    WaterStream inflow,
    WaterStream outflow,
    WaterStream diverted,
    List<Account> accounts,
    List<G> growths,
    List<Notice> notices) {}
