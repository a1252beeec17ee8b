package org.marshlight.http.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Months;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.PlanEstimate;

/**
 * Builds the component schemas of records from their shapes. What is sent is closed: it may hold no
 * other field. What is answered is open, for answers may gain fields.
 */
final class RecordSchemas {

  private final Map<String, Schema> components = new TreeMap<>();
  private final Set<Class<?>> sent = new HashSet<>();

  /** Every schema built so far, by name. */
  Map<String, Schema> components() {
    return components;
  }

  /** A reference to the schema of a record that clients send. Build these first. */
  Schema sent(Class<? extends Record> type) {
    sent.add(type);
    String name = name(type);
    if (!components.containsKey(name)) {
      components.put(name, OASFactory.createSchema());
      components.put(name, record(type, new Direction(true, true, null)));
    }
    return reference(name);
  }

  /** A reference to the schema of a record that is answered. */
  Schema answered(Class<? extends Record> type) {
    return answered(type, null, sent.contains(type) ? name(type) + "Answer" : name(type));
  }

  /** The same for a record with one type parameter. */
  Schema answered(Class<? extends Record> type, Class<? extends Record> argument, String name) {
    if (!components.containsKey(name)) {
      components.put(name, OASFactory.createSchema());
      components.put(name, record(type, new Direction(false, sent.contains(type), argument)));
    }
    return reference(name);
  }

  private Schema record(Class<? extends Record> type, Direction direction) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.OBJECT);
    Meaning meaning = type.getAnnotation(Meaning.class);
    schema.setDescription(meaning == null ? null : meaning.value());
    if (direction.sent()) {
      schema.setAdditionalPropertiesBoolean(false);
    }
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      schema.addProperty(field.name(), field(field, direction));
      if (isRequired(type, field, direction)) {
        schema.addRequired(field.name());
      }
    }
    return schema;
  }

  private static boolean isRequired(Class<?> type, RecordShape.Field field, Direction direction) {
    return direction.sent() ? field.required() : type != PlanEstimate.class;
  }

  private Schema field(RecordShape.Field field, Direction direction) {
    Class<?> element = direction.elementOf(field);
    Schema schema;
    if (field.type() == List.class) {
      boolean monthWithoutValue = element == Double.class;
      schema = list(field, value(field, element, direction, monthWithoutValue));
    } else if (field.type() == Map.class) {
      schema = map(field, value(field, element, direction, false));
    } else {
      return described(value(field, element, direction, !field.required()), field);
    }
    if (!direction.sent() && direction.sparse() && !field.required()) {
      schema.addType(SchemaType.NULL);
    }
    return described(schema, field);
  }

  private static Schema described(Schema schema, RecordShape.Field field) {
    return schema.getRef() == null ? schema.description(FieldWords.of(field)) : schema;
  }

  private static Schema list(RecordShape.Field field, Schema items) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.ARRAY).items(items);
    field
        .size()
        .ifPresent(
            size -> schema.minItems(size.min() == 0 ? null : size.min()).maxItems(size.max()));
    if (field.monthly()) {
      schema.minItems(Months.COUNT).maxItems(Months.COUNT);
    }
    return schema;
  }

  private static Schema map(RecordShape.Field field, Schema values) {
    Schema schema =
        OASFactory.createSchema().addType(SchemaType.OBJECT).additionalPropertiesSchema(values);
    field.size().ifPresent(size -> schema.maxProperties(size.max()));
    return schema;
  }

  private Schema value(
      RecordShape.Field field, Class<?> type, Direction direction, boolean mayBeNull) {
    if (type.isRecord()) {
      Class<? extends Record> record = type.asSubclass(Record.class);
      return direction.sent() ? sent(record) : answeredOrNull(record, mayBeNull);
    }
    if (type == JsonNode.class) {
      return OASFactory.createSchema()
          .addType(SchemaType.OBJECT)
          .additionalPropertiesSchema(OASFactory.createSchema());
    }
    Schema schema = Scalars.of(field, type);
    if (direction.sent() || !mayBeNull || type.isPrimitive()) {
      return schema;
    }
    // an enumeration that holds null would lose it when the document is written
    return schema.getEnumeration() == null ? schema.addType(SchemaType.NULL) : orNull(schema);
  }

  private Schema answeredOrNull(Class<? extends Record> type, boolean mayBeNull) {
    Schema reference = answered(type);
    return mayBeNull ? orNull(reference) : reference;
  }

  private static Schema orNull(Schema schema) {
    return OASFactory.createSchema()
        .addAnyOf(schema)
        .addAnyOf(OASFactory.createSchema().addType(SchemaType.NULL));
  }

  private static Schema reference(String name) {
    return OASFactory.createSchema().ref("#/components/schemas/" + name);
  }

  private static String name(Class<?> type) {
    Class<?> owner = type.getEnclosingClass();
    return owner == null
        ? type.getSimpleName()
        : owner.getSimpleName().replaceAll("(Design|Estimate)$", "") + type.getSimpleName();
  }

  /**
   * Which way a record goes, and what its type parameter stands for.
   *
   * @param sent whether clients send it
   * @param sparse whether it is of those that clients send, and so may lack any field
   * @param argument the type argument; null if there is none
   */
  private record Direction(boolean sent, boolean sparse, Class<? extends Record> argument) {

    /** The type of a field or of its elements, with the type parameter resolved. */
    Class<?> elementOf(RecordShape.Field field) {
      Type type = field.component().getGenericType();
      boolean open =
          type instanceof TypeVariable<?>
              || type instanceof ParameterizedType list
                  && list.getActualTypeArguments()[0] instanceof TypeVariable<?>;
      return open ? argument : field.elementType();
    }
  }
}
