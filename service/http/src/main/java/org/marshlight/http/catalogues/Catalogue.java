package org.marshlight.http.catalogues;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.marshlight.climate.BuiltInClimate;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.evidence.CatalogueItem;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.FormulaEntry;
import org.marshlight.evidence.Source;
import org.marshlight.evidence.SourceList;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/**
 * A catalogue as it is served.
 *
 * @param name name in the path
 * @param about what its items are
 * @param itemType record of an item
 * @param items the items by id, in order
 */
public record Catalogue(
    String name, String about, Class<? extends Record> itemType, Map<String, Record> items) {

  private static final List<Catalogue> ALL =
      List.of(
          of(
              "climates",
              "Climates that a plan can name",
              BuiltInClimate.class,
              BuiltInClimates.standard().all(),
              BuiltInClimate::id),
          numbers("feeds", "Wastes that a tank can be fed"),
          numbers("plants", "Plants that beds can bear"),
          numbers("soils", "Soils that a site can have"),
          numbers("ingredients", "What else a heap can be made of"),
          numbers("fuels", "Fuels that heat, or that gas and alcohol displace"),
          numbers("media", "What beds can be filled with"),
          of(
              "coefficients",
              "Every number that is not physics",
              CoefficientRow.class,
              CoefficientBook.standard().rows(),
              CoefficientRow::id),
          of(
              "sources",
              "Where formulas, numbers and cautions come from",
              Source.class,
              SourceList.standard().all(),
              Source::id),
          of(
              "formulas",
              "Every published equation that the engine works",
              FormulaEntry.class,
              FormulaBook.standard().entries(),
              FormulaEntry::id),
          of(
              "cautions",
              "Every caution",
              Caution.class,
              CautionBook.standard().all(),
              Caution::id));

  /** Every catalogue. */
  public static List<Catalogue> all() {
    return ALL;
  }

  /** The catalogue of that name. */
  static Catalogue named(String name) {
    return ALL.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  /** All items, in order. */
  List<Record> list() {
    return new ArrayList<>(items.values());
  }

  Optional<Record> find(String id) {
    return Optional.ofNullable(items.get(id));
  }

  private static Catalogue numbers(String name, String about) {
    return of(
        name, about, CatalogueItem.class, Catalogues.standard().items(name), CatalogueItem::id);
  }

  private static <T extends Record> Catalogue of(
      String name, String about, Class<T> type, Iterable<T> items, Function<T, String> id) {
    Map<String, Record> byId = new LinkedHashMap<>();
    items.forEach(item -> byId.put(id.apply(item), item));
    return new Catalogue(name, about, type, Collections.unmodifiableMap(byId));
  }
}
