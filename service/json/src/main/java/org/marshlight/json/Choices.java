package org.marshlight.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.marshlight.contract.WireName;

/** The constants of a type of choices, by the name each has on the wire. */
final class Choices {

  private static final ClassValue<Map<String, Object>> BY_TYPE =
      new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
          Map<String, Object> byName = new LinkedHashMap<>();
          for (Object constant : type.getEnumConstants()) {
            byName.put(WireName.of((Enum<?>) constant), constant);
          }
          return Collections.unmodifiableMap(byName);
        }
      };

  private Choices() {}

  static Map<String, Object> of(Class<?> type) {
    return BY_TYPE.get(type);
  }
}
