package org.marshlight.compost;

import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.feed.Account;

/**
 * What a year of composting comes to.
 *
 * @param estimate the figures
 * @param account the books of the heap
 * @param notices remarks on the figures
 */
public record CompostOutcome(CompostEstimate estimate, Account account, List<Notice> notices) {}
