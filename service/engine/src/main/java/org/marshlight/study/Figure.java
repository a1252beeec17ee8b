package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Months;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.PlanEstimate;

/**
 * One number of an estimate, as studies follow it.
 *
 * @param name name under which it is listed
 * @param pointer RFC 6901 pointer to it, or to the twelve months it is taken from, in an estimate
 * @param path the names of the pointer
 * @param unit UCUM code
 * @param meaning what it is
 * @param low least value it can have
 * @param high greatest value it can have
 * @param of how one number is taken from twelve months
 * @param error where the figure's own error comes from
 */
record Figure(
    String name,
    String pointer,
    List<String> path,
    String unit,
    String meaning,
    double low,
    double high,
    Reduction of,
    StageError error) {

  /** How one number is taken from twelve months. */
  enum Reduction {
    /** There is but one number. */
    VALUE,
    LEAST,
    GREATEST
  }

  /** The number in a run; NaN if that run has none. */
  double value(Outcome outcome) {
    Object node = outcome.part(path.get(0));
    for (int i = 1; i < path.size() && node != null; i++) {
      node = child(node, path.get(i));
    }
    if (node instanceof List<?> months) {
      return reduced(months);
    }
    return node == null ? Double.NaN : ((Number) node).doubleValue();
  }

  private double reduced(List<?> months) {
    double reduced = Double.NaN;
    for (Object month : months) {
      if (month != null) {
        double value = ((Number) month).doubleValue();
        boolean better = of == Reduction.LEAST ? value < reduced : value > reduced;
        reduced = Double.isNaN(reduced) || better ? value : reduced;
      }
    }
    return reduced;
  }

  private static Object child(Object node, String name) {
    if (node instanceof List<?> list) {
      int index = Integer.parseInt(name);
      return index < list.size() ? list.get(index) : null;
    }
    Record record = (Record) node;
    return RecordShape.of(record.getClass()).field(name).orElseThrow().of(record);
  }

  /**
   * The figures that a pointer names in the estimate of a run: one, or one for each of twelve
   * months.
   *
   * @param pointer pointer from the root of the estimate
   * @param base a run of the plan
   * @param at where the pointer itself stands in the request
   * @param faults receives why there is no such figure
   */
  static List<Figure> find(String pointer, Outcome base, String at, List<Fault> faults) {
    if (!Pointer.isPointer(pointer) || pointer.isEmpty()) {
      faults.add(Fault.of("study.no-figure", at, pointer, "a name or pointer of a figure"));
      return List.of();
    }
    List<String> path = Pointer.names(pointer);
    List<String> parts = RecordShape.of(PlanEstimate.class).names();
    if (!parts.contains(path.get(0))) {
      return unknown(pointer, path.get(0), parts, at, faults);
    }
    Object node = base.part(path.get(0));
    Object owner = null;
    RecordShape.Field field = null;
    for (String name : path.subList(1, path.size())) {
      if (node instanceof Record record) {
        RecordShape shape = RecordShape.of(record.getClass());
        owner = record;
        field = shape.field(name).orElse(null);
        if (field == null) {
          return unknown(pointer, name, shape.names(), at, faults);
        }
        node = field.of(record);
      } else if (node instanceof List<?> list
          && name.matches("0|[1-9][0-9]{0,8}")
          && Integer.parseInt(name) < list.size()) {
        node = list.get(Integer.parseInt(name));
      } else {
        faults.add(
            Fault.of(
                "study.pointer-to-nothing", at, pointer, "a figure of this plan", "name", name));
        return List.of();
      }
    }
    return found(pointer, path, (Record) owner, field, node, at, faults);
  }

  private static List<Figure> found(
      String pointer,
      List<String> path,
      Record owner,
      RecordShape.Field field,
      Object node,
      String at,
      List<Fault> faults) {
    Quantity quantity = field == null ? null : field.quantity().orElse(null);
    boolean months = node instanceof List && field.monthly();
    if (quantity == null || (node instanceof List && !months)) {
      faults.add(Fault.of("study.no-number", at, pointer, "a pointer to a number or to months"));
      return List.of();
    }
    String unit = unit(owner, quantity);
    List<Figure> figures = new ArrayList<>();
    for (int month = 0; month < (months ? Months.COUNT : 1); month++) {
      String to = months ? Pointer.child(pointer, month) : pointer;
      figures.add(
          new Figure(
              to.substring(1).replace('/', '.'),
              to,
              Pointer.names(to),
              unit,
              quantity.meaning(),
              quantity.min(),
              quantity.max(),
              Reduction.VALUE,
              StageError.NONE));
    }
    return figures;
  }

  private static String unit(Record owner, Quantity quantity) {
    if (!quantity.unit().equals(Quantity.UNIT_BESIDE)) {
      return quantity.unit();
    }
    Object unit = RecordShape.of(owner.getClass()).field("unit").map(f -> f.of(owner)).orElse("1");
    return String.valueOf(unit);
  }

  private static List<Figure> unknown(
      String pointer, String name, List<String> known, String at, List<Fault> faults) {
    faults.add(
        Fault.unknown(
            "study.pointer-unknown-name",
            at,
            pointer,
            name,
            known,
            "a figure of an estimate",
            "name",
            name));
    return List.of();
  }

  /** The same number under another name, taken from its months or with an error of its own. */
  Figure as(String otherName, String otherPointer, Reduction otherOf, StageError otherError) {
    return new Figure(
        otherName,
        otherPointer,
        Pointer.names(otherPointer),
        unit,
        meaning,
        low,
        high,
        otherOf,
        otherError);
  }
}
