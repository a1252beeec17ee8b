package org.marshlight.http.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marshlight.contract.RecordShape;
import org.marshlight.http.form.Item.Kind;
import org.marshlight.loop.Plan;

/** How a field of a plan is asked, by its type. */
final class FieldKind {

  private static final int YEAR = 12;

  private FieldKind() {}

  /**
   * @param field the field
   * @param path its dotted path without places in lists
   */
  static Kind of(RecordShape.Field field, String path) {
    if (field.type() == List.class) {
      return ofList(field);
    }
    if (field.type() == Map.class) {
      return Kind.OVERRIDES;
    }
    if (field.type().isRecord()) {
      boolean root = path.indexOf('.') < 0;
      return root && !FormOutline.ALWAYS_OPEN.contains(path) ? Kind.SECTION : Kind.GROUP;
    }
    if (field.type().isEnum() || field.catalogue().isPresent()) {
      return Kind.CHOICE;
    }
    if (field.type() == Boolean.class) {
      return Kind.FLAG;
    }
    return field.quantity().isPresent() ? Kind.NUMBER : Kind.TEXT;
  }

  /** The kind of the field that a pointer names; empty if it names none. */
  static Optional<Kind> at(String pointer) {
    if (pointer.isEmpty()) {
      return Optional.empty();
    }
    Class<?> type = Plan.class;
    StringBuilder path = new StringBuilder();
    RecordShape.Field field = null;
    for (String token : pointer.substring(1).split("/")) {
      if (token.matches("\\d+")) {
        continue;
      }
      if (!type.isRecord()) {
        return Optional.empty();
      }
      Optional<RecordShape.Field> found =
          RecordShape.of(type.asSubclass(Record.class)).field(token);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      field = found.get();
      type = field.elementType();
      path.append(path.isEmpty() ? "" : ".").append(token);
    }
    return field == null ? Optional.empty() : Optional.of(of(field, path.toString()));
  }

  private static Kind ofList(RecordShape.Field field) {
    if (field.elementType().isRecord()) {
      return Kind.LIST;
    }
    if (field.elementType().isEnum()) {
      return Kind.CHOICES;
    }
    if (field.monthly()) {
      return Kind.TWELVE;
    }
    boolean sectors = field.size().map(size -> size.min() == YEAR).orElse(false);
    return sectors ? Kind.SECTORS : Kind.MONTHS;
  }
}
