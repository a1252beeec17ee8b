package org.marshlight.feed;

import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.contract.Usual;

/**
 * The people whose wastewater enters.
 *
 * @param count how many
 */
@Meaning("The people whose wastewater enters.")
public record PeopleDesign(
    @Quantity(
            unit = "1",
            min = 0,
            max = 200,
            meaning = "Number of people.",
            usual = "feed.default.people")
        Integer count,
    @TwelveMonths
        @Quantity(
            unit = "1",
            min = 0,
            max = 1,
            meaning = "Share of each month that they are at home; all of it if not given.")
        List<Double> presentFraction,
    @Meaning("What of their wastewater enters the tank.") @Usual("all") Wastewater wastewater) {}
