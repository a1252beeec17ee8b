package org.marshlight.loop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;

/**
 * One number of a plan, named by an RFC 6901 pointer: what it is, what it may be, and how to change
 * it. A coefficient is named under {@code /coefficients}, whether the plan sets it or not.
 */
public final class PlanField {

  private static final String COEFFICIENTS = "coefficients";

  private final String pointer;
  private final List<String> path;
  private final String unit;
  private final double low;
  private final double high;
  private final String meaning;
  private final boolean whole;
  private final String usual;

  private PlanField(
      String pointer,
      List<String> path,
      String unit,
      double low,
      double high,
      String meaning,
      boolean whole,
      String usual) {
    this.pointer = pointer;
    this.path = path;
    this.unit = unit;
    this.low = low;
    this.high = high;
    this.meaning = meaning;
    this.whole = whole;
    this.usual = usual;
  }

  /**
   * The field that a pointer names in a plan.
   *
   * @param plan a legal plan
   * @param pointer pointer from the plan's root
   * @param at where the pointer itself stands in the request
   * @param faults receives why there is no such field
   * @return the field, or null with a fault
   */
  public static PlanField find(Plan plan, String pointer, String at, List<Fault> faults) {
    if (!Pointer.isPointer(pointer) || pointer.isEmpty()) {
      faults.add(Fault.of("loop.no-pointer", at, pointer, "an RFC 6901 pointer to a number"));
      return null;
    }
    List<String> path = Pointer.names(pointer);
    Walk walk = new Walk(pointer, at, faults);
    if (path.get(0).equals(COEFFICIENTS) && path.size() == 2) {
      return walk.coefficient(path);
    }
    return walk.field(plan, path);
  }

  /** Pointer from the plan's root. */
  public String pointer() {
    return pointer;
  }

  /** UCUM code. */
  public String unit() {
    return unit;
  }

  /** Least value that a plan may have there. */
  public double low() {
    return low;
  }

  /** Greatest value that a plan may have there. */
  public double high() {
    return high;
  }

  /** What the number is. */
  public String meaning() {
    return meaning;
  }

  /** Whether only whole numbers make sense. */
  public boolean whole() {
    return whole;
  }

  /** Id of the coefficient, if the field is one; null otherwise. */
  public String coefficient() {
    return path.get(0).equals(COEFFICIENTS) ? path.get(1) : null;
  }

  /** The number that a plan has there, or that stands in for it; NaN if nothing does. */
  public double value(Plan plan) {
    if (coefficient() != null) {
      return LoopModel.coefficients(plan).value(coefficient());
    }
    Object value = plan;
    for (String name : path) {
      value = child(value, name);
    }
    if (value != null) {
      return ((Number) value).doubleValue();
    }
    return usual.isEmpty() ? Double.NaN : LoopModel.coefficients(plan).value(usual);
  }

  /**
   * A number as the plan's run takes it: zero where it is so near to zero that it counts as zero.
   *
   * @param value a number for this field, in its unit
   */
  public double counted(double value) {
    boolean negligible =
        coefficient() == null
            ? NegligibleNumbers.negligible(value, low, high)
            : NegligibleNumbers.negligible(
                value, CoefficientBook.standard().find(coefficient()).orElseThrow());
    return negligible ? 0 : value;
  }

  /**
   * The same plan with another number there, rounded where only whole numbers make sense and zero
   * where it counts as zero.
   */
  public Plan with(Plan plan, double number) {
    double value = counted(number);
    if (coefficient() != null) {
      Map<String, Double> overrides =
          new TreeMap<>(plan.coefficients() == null ? Map.of() : plan.coefficients());
      overrides.put(coefficient(), value);
      return RecordShape.changed(plan, COEFFICIENTS, Collections.unmodifiableMap(overrides));
    }
    Object boxed;
    if (whole) {
      boxed = (int) Math.rint(value);
    } else {
      boxed = value;
    }
    return (Plan) replaced(plan, 0, boxed);
  }

  private Object replaced(Object node, int depth, Object value) {
    if (depth == path.size()) {
      return value;
    }
    if (node instanceof List<?> list) {
      int index = Integer.parseInt(path.get(depth));
      List<Object> copy = new ArrayList<>(list);
      copy.set(index, replaced(list.get(index), depth + 1, value));
      return Collections.unmodifiableList(copy);
    }
    String name = path.get(depth);
    return RecordShape.changed((Record) node, name, replaced(child(node, name), depth + 1, value));
  }

  private static Object child(Object node, String name) {
    if (node instanceof List<?> list) {
      return list.get(Integer.parseInt(name));
    }
    Record record = (Record) node;
    return RecordShape.of(record.getClass()).field(name).orElseThrow().of(record);
  }

  /** The way to a field, with a fault where it ends too soon. */
  private record Walk(String pointer, String at, List<Fault> faults) {

    PlanField coefficient(List<String> path) {
      CoefficientRow row = CoefficientBook.standard().find(path.get(1)).orElse(null);
      if (row == null) {
        List<String> ids =
            CoefficientBook.standard().rows().stream().map(CoefficientRow::id).toList();
        return unknown(path.get(1), ids);
      }
      return new PlanField(
          pointer, path, row.unit(), row.least(), row.most(), row.note(), false, "");
    }

    PlanField field(Plan plan, List<String> path) {
      Object node = plan;
      RecordShape.Field field = null;
      for (String name : path) {
        if (node instanceof Record record) {
          RecordShape shape = RecordShape.of(record.getClass());
          field = shape.field(name).orElse(null);
          if (field == null) {
            return unknown(name, shape.names());
          }
          node = field.of(record);
        } else if (node instanceof List<?> list) {
          if (!name.matches("0|[1-9][0-9]{0,8}") || Integer.parseInt(name) >= list.size()) {
            return ends(name);
          }
          node = list.get(Integer.parseInt(name));
        } else {
          return ends(name);
        }
      }
      return number(path, field, node);
    }

    private PlanField number(List<String> path, RecordShape.Field field, Object node) {
      Quantity quantity = field.quantity().orElse(null);
      if (quantity == null
          || node instanceof List
          || (node == null && field.type() == List.class)) {
        faults.add(Fault.of("loop.pointer-to-no-number", at, pointer, "a pointer to one number"));
        return null;
      }
      return new PlanField(
          pointer,
          path,
          quantity.unit(),
          quantity.min(),
          quantity.max(),
          quantity.meaning(),
          field.elementType() == Integer.class,
          quantity.usual());
    }

    private PlanField unknown(String name, List<String> known) {
      faults.add(
          Fault.unknown(
              "loop.pointer-unknown-name",
              at,
              pointer,
              name,
              known,
              "a field of the plan",
              "name",
              name));
      return null;
    }

    private PlanField ends(String name) {
      faults.add(
          Fault.of(
              "loop.pointer-to-nothing",
              at,
              pointer,
              "a pointer to something that the plan has",
              "name",
              name));
      return null;
    }
  }
}
