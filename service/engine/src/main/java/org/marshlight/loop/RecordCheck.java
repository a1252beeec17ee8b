package org.marshlight.loop;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Annotation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.evidence.Catalogues;

/** Holds a record of the contract to what is said on its fields, one field at a time. */
public final class RecordCheck {

  private static final Validator VALIDATOR =
      Validation.byDefaultProvider()
          .configure()
          .messageInterpolator(new ParameterMessageInterpolator())
          .buildValidatorFactory()
          .getValidator();

  private RecordCheck() {}

  /**
   * Every field that is missing, out of its bounds, too long, or no id of its catalogue, by
   * pointer; the validator itself finds them in no fixed order.
   *
   * @param record the record as read
   */
  public static List<Fault> faults(Record record) {
    List<Fault> faults = new ArrayList<>();
    for (ConstraintViolation<Record> violation : VALIDATOR.validate(record)) {
      faults.add(fault(violation));
    }
    faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::code));
    catalogueFaults(record, Pointer.ROOT, faults);
    return faults;
  }

  private static Fault fault(ConstraintViolation<Record> violation) {
    String pointer = pointer(violation.getPropertyPath());
    Object rejected = violation.getInvalidValue();
    Annotation constraint = violation.getConstraintDescriptor().getAnnotation();
    if (constraint instanceof NotNull) {
      return Fault.of("loop.missing", pointer, null, "a value", "field", fieldName(pointer));
    }
    if (constraint instanceof Quantity quantity) {
      return quantityFault(pointer, rejected, quantity);
    }
    if (constraint instanceof TwelveMonths) {
      return Fault.of(
          "loop.twelve-months",
          pointer,
          rejected == null ? null : ((List<?>) rejected).size() + " values",
          "12 values, January first",
          "field",
          fieldName(pointer));
    }
    if (constraint instanceof Size size) {
      return Fault.of(
          "loop.too-many",
          pointer,
          rejected instanceof String ? rejected : null,
          size.min() + " to " + size.max() + " entries or characters",
          "field",
          fieldName(pointer),
          "max",
          size.max());
    }
    if (constraint instanceof Pattern pattern) {
      return Fault.of(
          "loop.malformed", pointer, rejected, pattern.regexp(), "field", fieldName(pointer));
    }
    throw new IllegalStateException("constraint without a sentence: " + constraint);
  }

  private static Fault quantityFault(String pointer, Object rejected, Quantity quantity) {
    Object value = rejected;
    if (rejected instanceof List<?> list) {
      String index = lastName(pointer);
      value = index.chars().allMatch(Character::isDigit) ? list.get(Integer.parseInt(index)) : null;
    }
    Fault fault =
        outOfRange(
            pointer, value, fieldName(pointer), quantity.min(), quantity.max(), quantity.unit());
    return quantity.reason().isEmpty() ? fault : because(fault, quantity.reason());
  }

  private static Fault because(Fault fault, String reason) {
    String code = "loop.out-of-range-because";
    Map<String, Object> params = new TreeMap<>(fault.params());
    params.put("reason", reason);
    return new Fault(
        code,
        fault.pointer(),
        fault.rejected(),
        Sentences.text(code, params),
        fault.allowed(),
        params);
  }

  /**
   * A number that lies outside of what its field may hold.
   *
   * @param pointer where it stands
   * @param rejected the number; null if there is none
   * @param field what it is called
   * @param low least legal value
   * @param high greatest legal value
   * @param unit UCUM code of all three
   */
  public static Fault outOfRange(
      String pointer, Object rejected, String field, double low, double high, String unit) {
    String range =
        Sentences.number(low)
            + " to "
            + Sentences.number(high)
            + (unit.equals("1") ? "" : " " + unit);
    return Fault.of(
        "loop.out-of-range",
        pointer,
        rejected,
        range,
        "field",
        field,
        "range",
        range,
        "value",
        sent(rejected),
        "low",
        low,
        "high",
        high,
        "unit",
        unit);
  }

  /** A number as it was sent, not rounded as sentences round, or the text for none. */
  private static String sent(Object value) {
    boolean whole = value instanceof Double number && number == number.longValue();
    return whole ? String.valueOf(((Double) value).longValue()) : String.valueOf(value);
  }

  /** Walks the records of the plan for texts that must be ids of a catalogue. */
  private static void catalogueFaults(Record record, String pointer, List<Fault> faults) {
    for (RecordShape.Field field : RecordShape.of(record.getClass()).fields()) {
      Object value = field.of(record);
      String at = pointer + "/" + field.name();
      if (value instanceof String id && field.catalogue().isPresent()) {
        String catalogue = field.catalogue().get();
        if (!KnownIds.of(catalogue).contains(id)) {
          faults.add(
              Fault.unknown(
                  "loop.not-in-catalogue",
                  at,
                  id,
                  id,
                  KnownIds.of(catalogue),
                  String.join(", ", KnownIds.of(catalogue)),
                  "catalogue",
                  catalogue));
        }
      } else if (value instanceof Record nested) {
        catalogueFaults(nested, at, faults);
      } else if (value instanceof List<?> list) {
        for (int i = 0; i < list.size(); i++) {
          if (list.get(i) instanceof Record element) {
            catalogueFaults(element, at + "/" + i, faults);
          }
        }
      }
    }
  }

  private static String pointer(Path path) {
    String pointer = Pointer.ROOT;
    for (Path.Node node : path) {
      if (node.isInIterable() && node.getIndex() != null) {
        pointer = Pointer.child(pointer, node.getIndex());
      } else if (node.isInIterable() && node.getKey() != null) {
        pointer = Pointer.child(pointer, node.getKey().toString());
      }
      if (node.getName() != null && !node.getName().startsWith("<")) {
        pointer = Pointer.child(pointer, node.getName());
      }
    }
    return pointer;
  }

  /** The field's name; of an entry of a list, which one of which list. */
  private static String fieldName(String pointer) {
    String last = lastName(pointer);
    if (!last.matches("\\d{1,6}")) {
      return last;
    }
    String list = lastName(pointer.substring(0, pointer.lastIndexOf('/')));
    return list + " (entry " + (Integer.parseInt(last) + 1) + ")";
  }

  private static String lastName(String pointer) {
    return pointer.substring(pointer.lastIndexOf('/') + 1);
  }

  /** Ids of every catalogue that a plan can refer to. */
  static final class KnownIds {

    private KnownIds() {}

    static java.util.Collection<String> of(String catalogue) {
      return catalogue.equals("climates")
          ? org.marshlight.climate.BuiltInClimates.standard().ids()
          : Catalogues.standard().ids(catalogue);
    }
  }
}
