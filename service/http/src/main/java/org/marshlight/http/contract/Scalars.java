package org.marshlight.http.contract;

import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.Arrays;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;

/** Schemas of single values: numbers with unit and bounds, texts with a length, choices. */
final class Scalars {

  private static final String UNIT = "x-unit";

  private static final int LONGEST_TEXT = 4000;

  private Scalars() {}

  static Schema of(RecordShape.Field field, Class<?> type) {
    if (type == Boolean.class || type == boolean.class) {
      return OASFactory.createSchema().addType(SchemaType.BOOLEAN);
    }
    if (type == String.class) {
      return text(field);
    }
    if (type.isEnum()) {
      return choice(type);
    }
    if (type == Object.class) {
      return number(field, OASFactory.createSchema().addType(SchemaType.NUMBER))
          .addType(SchemaType.STRING)
          .addType(SchemaType.BOOLEAN)
          .maxLength(LONGEST_TEXT);
    }
    boolean whole = type == Integer.class || type == int.class;
    return number(
        field,
        OASFactory.createSchema()
            .addType(whole ? SchemaType.INTEGER : SchemaType.NUMBER)
            .format(whole ? "int32" : "double"));
  }

  private static Schema number(RecordShape.Field field, Schema schema) {
    schema.addExtension(UNIT, field.quantity().map(Quantity::unit).orElse(Quantity.UNIT_BESIDE));
    return schema
        .minimum(field.quantity().map(Quantity::min).map(Scalars::bound).orElse(null))
        .maximum(field.quantity().map(Quantity::max).map(Scalars::bound).orElse(null));
  }

  /** A bound as the document writes it; null where there is none. */
  private static BigDecimal bound(double value) {
    if (Double.isInfinite(value)) {
      return null;
    }
    BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
    return exact.scale() < 0 && exact.precision() - exact.scale() <= 16 ? exact.setScale(0) : exact;
  }

  private static Schema text(RecordShape.Field field) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.STRING);
    boolean own = field.type() == String.class;
    return schema.maxLength(own ? field.size().map(Size::max).orElse(LONGEST_TEXT) : LONGEST_TEXT);
  }

  private static Schema choice(Class<?> type) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.STRING);
    Arrays.stream(type.getEnumConstants())
        .map(constant -> WireName.of((Enum<?>) constant))
        .forEach(schema::addEnumeration);
    return schema;
  }
}
