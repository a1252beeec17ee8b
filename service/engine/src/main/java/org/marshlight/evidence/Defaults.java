package org.marshlight.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Params;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;

/**
 * Fills what a plan left out with the stated defaults of its fields, and keeps a list of what was
 * filled. One instance serves one run.
 */
public final class Defaults {

  private final CoefficientSet coefficients;
  private final List<Assumption> assumptions = new ArrayList<>();

  public Defaults(CoefficientSet coefficients) {
    this.coefficients = coefficients;
  }

  /** What was filled so far, in order. */
  public List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  /**
   * A copy of a record in which every absent field that states a default has it.
   *
   * @param design the record as sent
   * @param pointer where it stands in the plan
   */
  public <R extends Record> R fill(R design, String pointer) {
    RecordShape shape = RecordShape.of(design.getClass());
    Object[] values = new Object[shape.fields().size()];
    boolean changed = false;
    for (int i = 0; i < values.length; i++) {
      RecordShape.Field field = shape.fields().get(i);
      values[i] = field.of(design);
      if (values[i] == null) {
        values[i] = usual(field, pointer + "/" + field.name());
        changed |= values[i] != null;
      }
    }
    @SuppressWarnings("unchecked")
    R filled = changed ? (R) shape.create(values) : design;
    return filled;
  }

  private Object usual(RecordShape.Field field, String pointer) {
    String id = field.quantity().map(Quantity::usual).orElse("");
    if (!id.isEmpty()) {
      return number(field, pointer, id);
    }
    return field.usualChoice().map(name -> choice(field, pointer, name)).orElse(null);
  }

  private Object number(RecordShape.Field field, String pointer, String id) {
    CoefficientRow row = coefficients.book().find(id).orElseThrow();
    double value = coefficients.value(id);
    assumptions.add(
        new Assumption(
            "default",
            id,
            pointer,
            Sentences.text(
                "evidence.default-number",
                Params.of("field", field.name(), "value", value, "unit", row.unit())),
            value,
            row.unit(),
            row.source(),
            row.mark()));
    if (field.type() == Integer.class) {
      return (int) Math.rint(value);
    }
    return value;
  }

  private Object choice(RecordShape.Field field, String pointer, String name) {
    assumptions.add(
        new Assumption(
            "default",
            name,
            pointer,
            Sentences.text(
                "evidence.default-choice", Params.of("field", field.name(), "choice", name)),
            null,
            null,
            "house-choice",
            Mark.COMMON_PRACTICE.words()));
    if (field.type() == String.class) {
      return name;
    }
    @SuppressWarnings({"unchecked", "rawtypes"})
    Optional<?> constant = WireName.parse((Class) field.type(), name);
    return constant.orElseThrow();
  }
}
