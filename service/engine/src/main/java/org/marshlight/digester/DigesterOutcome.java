package org.marshlight.digester;

import java.util.List;
import java.util.function.Supplier;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.WaterStream;

/**
 * What a tank gives to the rest of the loop.
 *
 * @param estimate the figures
 * @param effluent what leaves for the beds
 * @param sludge what is pumped, mean year
 * @param accounts books of tank and gas store
 * @param glassM2 glass over the lid; nought without
 * @param gasEnergy energy that entered, left and stayed in the gas store
 * @param notices remarks
 * @param working works the steps at the design point
 */
public record DigesterOutcome(
    DigesterEstimate estimate,
    WaterStream effluent,
    Matter sludge,
    List<Account> accounts,
    double glassM2,
    GasEnergy gasEnergy,
    List<Notice> notices,
    Supplier<List<Step>> working) {

  /**
   * Energy of the gas in a year, kWh at net heating value.
   *
   * @param inKWh methane that reached the store
   * @param usedKWh burned by uses
   * @param surplusKWh flared or vented
   * @param storedKWh change of what the store holds
   */
  public record GasEnergy(double inKWh, double usedKWh, double surplusKWh, double storedKWh) {}
}
