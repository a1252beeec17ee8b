package org.marshlight.loop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;

/**
 * Counts numbers of a request that are too near to zero as zero, with a notice for each, before
 * anything is computed. No quotient of a model then has a divisor that is positive and yet so small
 * that the result overflows.
 *
 * <p>A number of the plan is negligible if it is not zero and nearer to zero than {@link #LEAST} in
 * the unit of its field: a billionth of a kilogram, hour, square metre or unit of money. A
 * coefficient is negligible if it is nearer to zero than {@link #LEAST} times the greatest number
 * of its book row, since the units of coefficients differ by many orders of magnitude. A number is
 * only counted as zero where zero is allowed and the number itself is within its bounds.
 */
public final class NegligibleNumbers {

  /** Numbers nearer to zero than this, in the unit of their field, count as zero. */
  public static final double LEAST = 1e-9;

  /** An answer's list of notices is bounded, and a plan may hold a year of hours. */
  private static final int MOST_NOTICES = 20;

  private static final String COEFFICIENTS = "/coefficients";

  private final List<Notice> notices = new ArrayList<>();

  private NegligibleNumbers() {}

  /**
   * A plan or a request with its negligible numbers counted as zero.
   *
   * @param record the plan or request as read; need not be legal
   * @return the same record where none of its numbers is negligible
   */
  public static <R extends Record> Counted<R> of(R record) {
    NegligibleNumbers found = new NegligibleNumbers();
    @SuppressWarnings("unchecked")
    R counted = (R) found.record(record, Pointer.ROOT);
    return new Counted<>(counted, List.copyOf(found.notices));
  }

  /**
   * Whether a number of a field is so near to zero that it counts as zero.
   *
   * @param value the number
   * @param low least legal value of the field
   * @param high greatest legal value of the field
   */
  static boolean negligible(double value, double low, double high) {
    return negligible(value, low, high, LEAST);
  }

  /**
   * Whether a coefficient is so near to zero that it counts as zero.
   *
   * @param value what a plan sets it to
   * @param row its row of the book
   */
  static boolean negligible(double value, CoefficientRow row) {
    double usual =
        Math.max(Math.abs(row.value()), Math.max(Math.abs(row.low()), Math.abs(row.high())));
    double scale = usual > 0 ? usual : Math.max(Math.abs(row.least()), Math.abs(row.most()));
    return negligible(value, row.least(), row.most(), LEAST * scale);
  }

  private static boolean negligible(double value, double low, double high, double least) {
    return value != 0
        && Math.abs(value) < least
        && low <= Math.min(0, value)
        && high >= Math.max(0, value);
  }

  private Record record(Record record, String pointer) {
    RecordShape shape = RecordShape.of(record.getClass());
    Object[] values = new Object[shape.fields().size()];
    boolean changed = false;
    for (int i = 0; i < values.length; i++) {
      RecordShape.Field field = shape.fields().get(i);
      Object value = field.of(record);
      values[i] = value(value, field, pointer + "/" + field.name());
      changed |= values[i] != value;
    }
    return changed ? shape.create(values) : record;
  }

  private Object value(Object value, RecordShape.Field field, String pointer) {
    if (value instanceof Record nested) {
      return record(nested, pointer);
    }
    if (value instanceof List<?> list) {
      return list(list, field, pointer);
    }
    if (value instanceof Map<?, ?> map && pointer.endsWith(COEFFICIENTS)) {
      return coefficients(map, pointer);
    }
    return value instanceof Double number ? number(number, field, pointer) : value;
  }

  private Object list(List<?> list, RecordShape.Field field, String pointer) {
    List<Object> values = new ArrayList<>(list.size());
    boolean changed = false;
    for (int i = 0; i < list.size(); i++) {
      Object value = list.get(i);
      Object counted = value == null ? null : value(value, field, pointer + "/" + i);
      values.add(counted);
      changed |= counted != value;
    }
    return changed ? Collections.unmodifiableList(values) : list;
  }

  private Object coefficients(Map<?, ?> map, String pointer) {
    Map<String, Object> values = new LinkedHashMap<>();
    boolean changed = false;
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      String id = (String) entry.getKey();
      CoefficientRow row = CoefficientBook.standard().find(id).orElse(null);
      boolean negligible =
          row != null && entry.getValue() instanceof Double value && negligible(value, row);
      if (negligible) {
        note(Pointer.child(pointer, id), id, entry.getValue());
      }
      values.put(id, negligible ? (Object) 0.0 : entry.getValue());
      changed |= negligible;
    }
    return changed ? Collections.unmodifiableMap(values) : map;
  }

  private Double number(Double value, RecordShape.Field field, String pointer) {
    Quantity quantity = field.quantity().orElse(null);
    if (quantity == null
        || quantity.unit().equals(Quantity.UNIT_BESIDE)
        || !negligible(value, quantity.min(), quantity.max())) {
      return value;
    }
    note(pointer, field.name(), value);
    return 0.0;
  }

  private void note(String pointer, String field, Object value) {
    if (notices.size() < MOST_NOTICES) {
      notices.add(
          Notice.of("loop.counts-as-zero", "field", field, "pointer", pointer, "value", value));
    }
  }

  /**
   * A record with its negligible numbers counted as zero.
   *
   * @param record the record
   * @param notices one for each number that counts as zero, the first twenty of them
   */
  public record Counted<R extends Record>(R record, List<Notice> notices) {}
}
