package org.marshlight.contract;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a record of the contract says of its fields, read once from its annotations. Jakarta's own
 * annotations cannot stand on a record component and are read from its accessor.
 *
 * @param type the record described
 * @param fields its components in order
 */
public record RecordShape(Class<? extends Record> type, List<Field> fields) {

  private static final ClassValue<RecordShape> SHAPES =
      new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
          return read(type.asSubclass(Record.class));
        }
      };

  private static final ClassValue<MethodHandle> CONSTRUCTORS =
      new ClassValue<>() {
        @Override
        protected MethodHandle computeValue(Class<?> type) {
          return constructor(type);
        }
      };

  /** The shape of a record class; cached. */
  public static RecordShape of(Class<? extends Record> type) {
    return SHAPES.get(type);
  }

  /**
   * A new record of this shape.
   *
   * @param values one value for each field, in order
   */
  public Record create(Object[] values) {
    try {
      return (Record) CONSTRUCTORS.get(type).invokeExact(values);
    } catch (RuntimeException | Error e) {
      throw e;
    } catch (Throwable e) {
      throw new IllegalStateException("cannot build " + type.getName(), e);
    }
  }

  /**
   * A copy of a record with another value in one of its fields.
   *
   * @throws IllegalArgumentException if there is no such field
   */
  public static <R extends Record> R changed(R record, String field, Object value) {
    RecordShape shape = of(record.getClass());
    Object[] values = new Object[shape.fields.size()];
    int place = shape.names().indexOf(field);
    if (place < 0) {
      throw new IllegalArgumentException(record.getClass() + " has no field " + field);
    }
    for (int i = 0; i < values.length; i++) {
      values[i] = i == place ? value : shape.fields.get(i).of(record);
    }
    @SuppressWarnings("unchecked")
    R changed = (R) shape.create(values);
    return changed;
  }

  /** The field of that name, if there is one. */
  public Optional<Field> field(String name) {
    return fields.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  /** Names of all fields, in order. */
  public List<String> names() {
    return fields.stream().map(Field::name).toList();
  }

  private static RecordShape read(Class<? extends Record> type) {
    List<Field> fields = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      fields.add(new Field(component));
    }
    return new RecordShape(type, List.copyOf(fields));
  }

  private static MethodHandle constructor(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
    }
    try {
      return MethodHandles.privateLookupIn(type, MethodHandles.lookup())
          .unreflectConstructor(type.getDeclaredConstructor(types))
          .asSpreader(Object[].class, types.length)
          .asType(java.lang.invoke.MethodType.methodType(Record.class, Object[].class));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("no canonical constructor in " + type.getName(), e);
    }
  }

  /**
   * One field of a record.
   *
   * @param component the record component behind it
   */
  public record Field(RecordComponent component) {

    public String name() {
      return component.getName();
    }

    /** The raw type; for a list, {@code List}. */
    public Class<?> type() {
      return component.getType();
    }

    /** The type of the elements of a list or of the values of a map, otherwise the type itself. */
    public Class<?> elementType() {
      Type generic = component.getGenericType();
      if (generic instanceof ParameterizedType parameterized) {
        Type[] arguments = parameterized.getActualTypeArguments();
        if (arguments[arguments.length - 1] instanceof Class<?> element) {
          return element;
        }
      }
      return component.getType();
    }

    public Optional<Quantity> quantity() {
      return Optional.ofNullable(component.getAnnotation(Quantity.class));
    }

    /** What the field means, from whichever annotation says it. */
    public String meaning() {
      Meaning meaning = component.getAnnotation(Meaning.class);
      return quantity().map(Quantity::meaning).orElse(meaning == null ? "" : meaning.value());
    }

    public boolean required() {
      return component.getAccessor().isAnnotationPresent(NotNull.class);
    }

    /** Wire name of the choice that stands in when none is given. */
    public Optional<String> usualChoice() {
      return Optional.ofNullable(component.getAnnotation(Usual.class)).map(Usual::value);
    }

    /** Name of the catalogue whose ids the field holds. */
    public Optional<String> catalogue() {
      return Optional.ofNullable(component.getAnnotation(CatalogueId.class))
          .map(CatalogueId::value);
    }

    public boolean monthly() {
      return component.isAnnotationPresent(TwelveMonths.class);
    }

    /** Bounds on the length of a list, map or text. */
    public Optional<Size> size() {
      return Optional.ofNullable(component.getAccessor().getAnnotation(Size.class));
    }

    /** The field's value in a record. */
    public Object of(Record owner) {
      try {
        return component.getAccessor().invoke(owner);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("cannot read " + component, e);
      }
    }
  }
}
