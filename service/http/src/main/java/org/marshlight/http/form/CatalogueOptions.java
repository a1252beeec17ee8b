package org.marshlight.http.form;

import java.util.List;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.evidence.Catalogues;
import org.marshlight.http.form.Item.Option;

/** The items of a catalogue as choices. */
final class CatalogueOptions {

  private static final String CLIMATES = "climates";

  private CatalogueOptions() {}

  static List<Option> of(String catalogue) {
    if (catalogue.equals(CLIMATES)) {
      return BuiltInClimates.standard().all().stream()
          .map(climate -> new Option(climate.id(), climate.name()))
          .toList();
    }
    return Catalogues.standard().items(catalogue).stream()
        .map(item -> new Option(item.id(), item.name()))
        .toList();
  }
}
