package org.marshlight.evidence;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;

/**
 * Where a formula, a coefficient or a check comes from.
 *
 * @param read whether the figures cited from it were read in it or in a faithful copy of it; if
 *     not, they are recalled
 */
@Meaning("Where a formula, a coefficient or a check comes from.")
public record Source(
    @NotNull @Meaning("Short name used beside figures.") @Size(max = 100) String id,
    @NotNull @Meaning("Authors, title, publisher or journal, year.") @Size(max = 1000)
        String citation,
    @Meaning("Whether figures cited from it were read rather than recalled.") boolean read,
    @NotNull @Meaning("Edition, place or limits of what was read.") @Size(max = 2000)
        String note) {}
