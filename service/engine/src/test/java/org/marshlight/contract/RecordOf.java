package org.marshlight.contract;

/** Creates records of the contract by field name, so that a new field breaks no test. */
public final class RecordOf {

  private RecordOf() {}

  /**
   * A record with some of its fields given and the others null.
   *
   * @param type class of the record
   * @param pairs name and value of each field that is given
   * @throws IllegalArgumentException if the record has no field of that name
   */
  public static <R extends Record> R record(Class<R> type, Object... pairs) {
    RecordShape shape = RecordShape.of(type);
    Object[] values = new Object[shape.fields().size()];
    for (int i = 0; i < pairs.length; i += 2) {
      int place = shape.names().indexOf(pairs[i]);
      if (place < 0) {
        throw new IllegalArgumentException(type + " has no " + pairs[i]);
      }
      values[place] = pairs[i + 1];
    }
    return type.cast(shape.create(values));
  }
}
