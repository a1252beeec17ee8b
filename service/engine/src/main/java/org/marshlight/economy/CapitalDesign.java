package org.marshlight.economy;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Cost of building each part, in the plan's currency.
 *
 * @param tank the tank itself
 * @param cover glass and night insulation over it
 * @param gas store, pipes and burners
 * @param beds all beds
 * @param fuel mash tun, fermenter and still
 * @param compost heap or bins
 */
@Meaning("Cost of building each part, in the plan's currency.")
public record CapitalDesign(
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "The tank itself.") Double tank,
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "Glass and night insulation over it.")
        Double cover,
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "Store, pipes and burners.") Double gas,
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "All beds.") Double beds,
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "Mash tun, fermenter and still.")
        Double fuel,
    @Quantity(unit = "1", low = 0, high = 1e9, meaning = "Heap or bins.") Double compost) {}
