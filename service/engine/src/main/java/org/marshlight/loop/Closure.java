package org.marshlight.loop;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * How closed the loop is for one quantity, and where the rest went.
 *
 * @param returnedFraction share of what people and feeds bring that returns to land as compost
 */
@Meaning("How closed the loop is for one quantity, and where the rest went.")
public record Closure(
    @NotNull @Meaning("What is followed.") @Size(max = 40) String quantity,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "What returns to land over what people, feeds and purchases bring; null if they"
                    + " bring none.")
        Double returnedFraction,
    @Meaning("Where the rest went, the largest first.") @Size(max = 40) List<Flow> losses) {}
