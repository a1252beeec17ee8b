package org.marshlight.ethanol;

import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;

/**
 * What a year of making fuel alcohol comes to.
 *
 * @param estimate the figures
 * @param stillage what the still leaves, given to the receiver named in the run
 * @param account the books of mash and still
 * @param notices remarks on the figures
 * @param humanOrigin whether anything mashed grew on human waste
 */
public record EthanolOutcome(
    EthanolEstimate estimate,
    Matter stillage,
    Account account,
    List<Notice> notices,
    boolean humanOrigin) {}
