package org.marshlight.feed;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A waste fed to the tank beside the household's wastewater.
 *
 * @param analysis its own analysis, in place of the catalogue's; null for the catalogue's
 */
@Meaning("A waste fed to the tank beside the household's wastewater.")
public record FeedDesign(
    @NotNull @Meaning("Id of a feed of the catalogue.") @CatalogueId("feeds") @Size(max = 60)
        String feed,
    @NotNull
        @Quantity(
            unit = "kg/d",
            min = 0,
            max = 5000,
            meaning = "Fresh mass on each day of the months named.")
        Double freshKgPerDay,
    @Size(max = 12)
        @Quantity(
            unit = "1",
            min = 1,
            max = 12,
            meaning = "Months in which it is fed, 1 = January; all if not given.")
        List<Integer> months,
    @Valid @Meaning("Its own analysis, where a laboratory has tested it.")
        LaboratoryAnalysis analysis) {

  /** A feed of the catalogue, fed all the year. */
  public static FeedDesign of(String feed, double freshKgPerDay) {
    return new FeedDesign(feed, freshKgPerDay, null, null);
  }
}
