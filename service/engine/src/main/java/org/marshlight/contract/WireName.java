package org.marshlight.contract;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Names of choices on the wire: lower case with hyphens. */
public final class WireName {

  private WireName() {}

  /** The name under which a choice stands in JSON, for instance {@code free-water-surface}. */
  public static String of(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The choice of that name, or empty if the type has none. */
  public static <E extends Enum<E>> Optional<E> parse(Class<E> type, String name) {
    return Arrays.stream(type.getEnumConstants()).filter(c -> of(c).equals(name)).findFirst();
  }

  /** Every wire name of a type of choices, in the order of declaration. */
  public static List<String> all(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants()).map(WireName::of).toList();
  }
}
