package org.marshlight.http.studies;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** How far a study is. */
@Meaning("How far a study is; one that has several parts counts each anew.")
public record StudyProgress(
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Runs done of its present part.") int done,
    @Quantity(unit = "1", min = 1, max = 1e9, meaning = "Runs that this part has.") int of) {}
