package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What a study takes: runs of the whole chain, the measure of its time.
 *
 * @param chainRuns how many it takes at the most
 * @param mostChainRuns how many a study may take
 */
@Meaning("What a study takes: runs of the whole chain, the measure of its time.")
public record StudyCost(
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Runs of the chain, at the most.")
        int chainRuns,
    @Quantity(unit = "1", min = 1, max = 1e9, meaning = "Runs that a study may take.")
        int mostChainRuns) {

  /** Runs that a study may take. */
  static final int MOST = 32_768;

  /** Runs that the verdicts of one plan count for beside its own. */
  static final int VERDICTS = 5;

  static StudyCost of(long chainRuns) {
    return new StudyCost(Math.toIntExact(chainRuns), MOST);
  }

  /**
   * Refuses a study that takes too much.
   *
   * @param pointer field that would have to be smaller
   * @param sent what it is
   * @param fits what would fit
   */
  void within(String pointer, Object sent, String fits) {
    if (chainRuns > mostChainRuns) {
      throw new Faults(
          List.of(
              Fault.of(
                  "study.too-large",
                  pointer,
                  sent,
                  fits,
                  "chainRuns",
                  chainRuns,
                  "most",
                  mostChainRuns,
                  "fits",
                  fits)));
    }
  }
}
