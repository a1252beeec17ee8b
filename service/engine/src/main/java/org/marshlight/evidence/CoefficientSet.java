package org.marshlight.evidence;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One value for every coefficient of the book: the central ones, with a plan's overrides or a
 * study's draws in place of some. Immutable.
 */
public final class CoefficientSet {

  private static final ClassValue<Binding> BINDINGS =
      new ClassValue<>() {
        @Override
        protected Binding computeValue(Class<?> type) {
          return Binding.of(type);
        }
      };

  private final CoefficientBook book;
  private final double[] values;
  private final boolean[] overridden;

  CoefficientSet(CoefficientBook book, double[] values, boolean[] overridden) {
    this.book = book;
    this.values = values;
    this.overridden = overridden;
  }

  public CoefficientBook book() {
    return book;
  }

  /** The value of a coefficient. */
  public double value(String id) {
    return values[book.ordinal(id)];
  }

  /** Whether a plan set the coefficient itself. */
  public boolean isOverridden(String id) {
    return overridden[book.ordinal(id)];
  }

  /** A copy with some values set by a plan. */
  public CoefficientSet with(Map<String, Double> overrides) {
    double[] copy = values.clone();
    boolean[] marks = overridden.clone();
    overrides.forEach(
        (id, value) -> {
          int ordinal = book.ordinal(id);
          copy[ordinal] = value;
          marks[ordinal] = true;
        });
    return new CoefficientSet(book, copy, marks);
  }

  /**
   * A copy with some values drawn. What a plan set itself keeps its mark.
   *
   * @param ordinals ordinals of the coefficients drawn
   * @param drawn a value for each
   */
  public CoefficientSet drawn(int[] ordinals, double[] drawn) {
    double[] copy = values.clone();
    for (int i = 0; i < ordinals.length; i++) {
      copy[ordinals[i]] = drawn[i];
    }
    return new CoefficientSet(book, copy, overridden);
  }

  /** Whether another set has the same values for some coefficients. */
  public boolean agrees(CoefficientSet other, int[] ordinals) {
    for (int ordinal : ordinals) {
      if (values[ordinal] != other.values[ordinal]) {
        return false;
      }
    }
    return true;
  }

  /** A coefficient record filled from this set. */
  public <R extends Record> R bind(Class<R> type) {
    return type.cast(BINDINGS.get(type).create(this, ""));
  }

  /** A record of one catalogue item, filled from this set. */
  public <R extends Record> R bind(Class<R> type, String itemId) {
    CatalogueRow row = type.getAnnotation(CatalogueRow.class);
    return type.cast(BINDINGS.get(type).create(this, row.value() + "." + itemId + "."));
  }

  /**
   * How a record's components map to coefficient ids.
   *
   * @param names ids, or their ends where they hang on an item
   * @param places ordinals in a book of the ids with a prefix, found once
   */
  private record Binding(String[] names, MethodHandle constructor, Map<Prefixed, int[]> places) {

    /** What is put before a name, in one book. */
    private record Prefixed(CoefficientBook book, String prefix) {}

    static Binding of(Class<?> type) {
      RecordComponent[] components = type.getRecordComponents();
      String[] names = new String[components.length];
      Class<?>[] types = new Class<?>[components.length];
      for (int i = 0; i < names.length; i++) {
        names[i] = components[i].getAnnotation(Coefficient.class).value();
        types[i] = components[i].getType();
      }
      try {
        MethodHandle constructor =
            MethodHandles.privateLookupIn(type, MethodHandles.lookup())
                .unreflectConstructor(type.getDeclaredConstructor(types))
                .asSpreader(double[].class, names.length)
                .asType(MethodType.methodType(Object.class, double[].class));
        return new Binding(names, constructor, new ConcurrentHashMap<>());
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("cannot bind " + type.getName(), e);
      }
    }

    private int[] ordinals(Prefixed prefixed) {
      int[] ordinals = new int[names.length];
      for (int i = 0; i < ordinals.length; i++) {
        ordinals[i] = prefixed.book().ordinal(prefixed.prefix() + names[i]);
      }
      return ordinals;
    }

    Object create(CoefficientSet set, String prefix) {
      int[] ordinals = places.computeIfAbsent(new Prefixed(set.book, prefix), this::ordinals);
      double[] arguments = new double[names.length];
      for (int i = 0; i < arguments.length; i++) {
        arguments[i] = set.values[ordinals[i]];
      }
      try {
        return constructor.invokeExact(arguments);
      } catch (RuntimeException | Error e) {
        throw e;
      } catch (Throwable e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
