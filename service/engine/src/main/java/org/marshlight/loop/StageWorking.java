package org.marshlight.loop;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.evidence.Step;

/** The steps of one stage at its design point. */
@Meaning("The steps of one stage at its design point.")
public record StageWorking(
    @Meaning("The stage.") Stage stage,
    @Meaning("What was worked, in order.") @Size(max = 200) List<Step> steps) {}
