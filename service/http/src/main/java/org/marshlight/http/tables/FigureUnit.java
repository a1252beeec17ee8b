package org.marshlight.http.tables;

import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;

/** Units of the numbers of a record. */
public final class FigureUnit {

  private static final String SIBLING = "unit";

  private FigureUnit() {}

  /** UCUM code of a number, from its own annotation or from beside it; empty if it has none. */
  public static String of(Record owner, RecordShape.Field field) {
    String unit = field.quantity().map(Quantity::unit).orElse("");
    if (!unit.equals(Quantity.UNIT_BESIDE)) {
      return unit;
    }
    return RecordShape.of(owner.getClass())
        .field(SIBLING)
        .map(sibling -> sibling.of(owner))
        .map(String::valueOf)
        .orElse("");
  }

  /** Whether a field only tells the unit of the numbers beside it. */
  public static boolean isUnitOfSiblings(RecordShape shape, RecordShape.Field field) {
    return field.name().equals(SIBLING)
        && shape.fields().stream()
            .flatMap(other -> other.quantity().stream())
            .anyMatch(quantity -> quantity.unit().equals(Quantity.UNIT_BESIDE));
  }
}
