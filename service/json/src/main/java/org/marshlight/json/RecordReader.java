package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Months;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.RecordShape;

/**
 * Reads a document as a record of the contract. Nothing is coerced: a text is no number, a number
 * no truth value, 4.5 no count; 4 and 4.0 are the same count. {@code null} means absent. Every
 * fault is found, up to {@value #MOST_FAULTS}; only a document without fault becomes a record.
 *
 * <p>Whether the values are legal is not decided here. Only the greatest length of a list or map is
 * held already, so that no work is spent on entries beyond it.
 */
public final class RecordReader {

  /** How many faults of one document are told at the most. */
  public static final int MOST_FAULTS = 500;

  private final List<Fault> faults = new ArrayList<>();

  private RecordReader() {}

  /**
   * The record that a document holds.
   *
   * @param document the document
   * @param type the record it should be
   * @throws Faults if it is not, with every fault in the order of the document
   */
  public static <R extends Record> R read(JsonDocument document, Class<R> type) {
    return read(document, type, Pointer.ROOT);
  }

  /**
   * The record that a part of a document holds.
   *
   * @param part the part, with its own repeated names
   * @param type the record it should be
   * @param pointer where the part stands in the whole document
   * @throws Faults if it is not, with every fault in the order of the part
   */
  static <R extends Record> R read(JsonDocument part, Class<R> type, String pointer) {
    PartlyRead<R> read = readWhatCanBe(part, type, pointer);
    if (!read.faults().isEmpty()) {
      throw new Faults(read.faults());
    }
    return read.record();
  }

  /**
   * As much of a document as fits the record; what does not is absent, with a fault.
   *
   * @param document the document
   * @param type the record it should be
   */
  public static <R extends Record> PartlyRead<R> readWhatCanBe(
      JsonDocument document, Class<R> type) {
    return readWhatCanBe(document, type, Pointer.ROOT);
  }

  private static <R extends Record> PartlyRead<R> readWhatCanBe(
      JsonDocument part, Class<R> type, String pointer) {
    RecordReader reader = new RecordReader();
    part.repeated().forEach(reader::add);
    Record read = reader.record(part.tree(), type, pointer);
    return new PartlyRead<>(type.cast(read), reader.faults);
  }

  private Record record(JsonNode node, Class<? extends Record> type, String pointer) {
    if (!node.isObject()) {
      return wrongType(node, JsonKind.OBJECT, pointer);
    }
    RecordShape shape = RecordShape.of(type);
    List<String> names = shape.names();
    Object[] values = new Object[names.size()];
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      String at = Pointer.child(pointer, entry.getKey());
      int index = names.indexOf(entry.getKey());
      if (index < 0) {
        unknown(entry.getKey(), entry.getValue(), names, at);
      } else if (!entry.getValue().isNull()) {
        values[index] = field(entry.getValue(), shape.fields().get(index), at);
      }
    }
    return shape.create(values);
  }

  private Object field(JsonNode node, RecordShape.Field field, String pointer) {
    if (field.type() == List.class) {
      return list(node, field, pointer);
    }
    if (field.type() == Map.class) {
      return map(node, field, pointer);
    }
    return single(node, field.type(), pointer);
  }

  private List<Object> list(JsonNode node, RecordShape.Field field, String pointer) {
    if (!node.isArray()) {
      return wrongType(node, JsonKind.LIST, pointer);
    }
    if (tooLong(node, field, pointer)) {
      return null;
    }
    List<Object> list = new ArrayList<>(node.size());
    for (JsonNode element : node) {
      String at = Pointer.child(pointer, list.size());
      if (element.isNull()) {
        add(Fault.of("json.null-element", at, null, "a value"));
        list.add(null);
      } else {
        list.add(single(element, field.elementType(), at));
      }
    }
    return Collections.unmodifiableList(list);
  }

  private Map<String, Object> map(JsonNode node, RecordShape.Field field, String pointer) {
    if (!node.isObject()) {
      return wrongType(node, JsonKind.OBJECT, pointer);
    }
    if (tooLong(node, field, pointer)) {
      return null;
    }
    Map<String, Object> map = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      if (!entry.getValue().isNull()) {
        String at = Pointer.child(pointer, entry.getKey());
        map.put(entry.getKey(), single(entry.getValue(), field.elementType(), at));
      }
    }
    return Collections.unmodifiableMap(map);
  }

  private boolean tooLong(JsonNode node, RecordShape.Field field, String pointer) {
    int most = field.monthly() ? Months.COUNT : field.size().map(Size::max).orElseThrow();
    if (node.size() > most) {
      add(
          Fault.of(
              "json.too-long",
              pointer,
              null,
              "at most " + most + " entries",
              "field",
              field.name(),
              "entries",
              node.size(),
              "max",
              most));
    }
    return node.size() > most;
  }

  private Object single(JsonNode node, Class<?> type, String pointer) {
    if (type.isRecord()) {
      return record(node, type.asSubclass(Record.class), pointer);
    }
    if (type == JsonNode.class) {
      return node.isObject() ? node : wrongType(node, JsonKind.OBJECT, pointer);
    }
    if (type == Double.class) {
      return number(node, pointer);
    }
    if (type == Integer.class) {
      return wholeNumber(node, pointer);
    }
    if (type == Boolean.class) {
      return node.isBoolean() ? node.booleanValue() : wrongType(node, JsonKind.TRUTH, pointer);
    }
    if (type == String.class) {
      return node.isTextual() ? node.textValue() : wrongType(node, JsonKind.TEXT, pointer);
    }
    if (type.isEnum()) {
      return choice(node, type, pointer);
    }
    throw new IllegalStateException("no request holds a " + type.getName());
  }

  private Double number(JsonNode node, String pointer) {
    if (!node.isNumber()) {
      return wrongType(node, JsonKind.NUMBER, pointer);
    }
    double value = node.doubleValue();
    if (!Double.isFinite(value)) {
      add(Fault.of("json.not-finite", pointer, node.asText(), "a finite number"));
    }
    return value;
  }

  private Integer wholeNumber(JsonNode node, String pointer) {
    Double value = number(node, pointer);
    if (value != null && Double.isFinite(value) && value != value.intValue()) {
      add(Fault.of("json.not-whole", pointer, node.asText(), "a whole number"));
    }
    return value == null ? null : value.intValue();
  }

  private Object choice(JsonNode node, Class<?> type, String pointer) {
    if (!node.isTextual()) {
      return wrongType(node, JsonKind.TEXT, pointer);
    }
    Map<String, Object> choices = Choices.of(type);
    Object chosen = choices.get(node.textValue());
    if (chosen == null) {
      add(
          Fault.unknown(
              "json.unknown-choice",
              pointer,
              node.textValue(),
              node.textValue(),
              choices.keySet(),
              String.join(", ", choices.keySet())));
    }
    return chosen;
  }

  private void unknown(String name, JsonNode value, List<String> known, String pointer) {
    if (faults.size() < MOST_FAULTS) {
      add(
          Fault.unknown(
              "json.unknown-name",
              pointer,
              value.isValueNode() ? value.asText() : null,
              name,
              known,
              String.join(", ", known)));
    }
  }

  private <T> T wrongType(JsonNode node, JsonKind expected, String pointer) {
    add(
        Fault.of(
            "json.wrong-type",
            pointer,
            node.isValueNode() ? node.toString() : null,
            expected.words(),
            "expected",
            expected.words(),
            "sent",
            JsonKind.of(node).words()));
    return null;
  }

  private void add(Fault fault) {
    if (faults.size() < MOST_FAULTS) {
      faults.add(fault);
    }
  }
}
