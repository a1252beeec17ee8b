package org.marshlight.wetland;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A three-way valve before the beds that can send the flow past them into the soil. A month is
 * diverted whole, for any of the reasons that the plan names.
 *
 * @param months months in which the flow always passes the beds, 1 = January; none if not given
 */
@Meaning("A three-way valve before the beds that can send the flow past them into the soil.")
public record DiversionDesign(
    @Size(max = 12)
        @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Months in which the flow always passes the beds, 1 = January.")
        List<Integer> months,
    @Meaning("Whether it does so in months with frost; no if not given.") Boolean inFrost,
    @Meaning(
            "Whether it does so in months in which a bed is overloaded or would flood; no if not"
                + " given.")
        Boolean whenClogged,
    @Meaning(
            "Whether it does so in months in which the outflow breaks a limit of its use; no if not"
                + " given.")
        Boolean whenOverLimit) {}
