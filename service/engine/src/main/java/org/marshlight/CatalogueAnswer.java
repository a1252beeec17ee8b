package org.marshlight;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.safety.Caution;

/** Items of a catalogue with the cautions that go with every answer. */
@Meaning("Items of a catalogue with the cautions that go with every answer.")
public record CatalogueAnswer<T>(
    @Meaning("The items.") @Size(max = 5000) List<T> items,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions,
    @NotNull @Meaning("Which version answered.") Meta meta) {

  public CatalogueAnswer {
    items = List.copyOf(items);
    cautions = Cautioned.required(cautions);
  }
}
