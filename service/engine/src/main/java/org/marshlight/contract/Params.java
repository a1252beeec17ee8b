package org.marshlight.contract;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Named parameters of a coded message, in the order in which they are given. */
public final class Params {

  private Params() {}

  /**
   * Parameters from name and value pairs.
   *
   * @param pairs name, value, name, value ...; values are finite numbers, texts or truth values
   * @throws IllegalArgumentException if a number is not finite
   */
  public static Map<String, Object> of(Object... pairs) {
    Map<String, Object> params = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      if (pairs[i + 1] instanceof Double value && !Double.isFinite(value)) {
        throw new IllegalArgumentException("parameter " + pairs[i] + " is " + value);
      }
      params.put((String) pairs[i], pairs[i + 1]);
    }
    return Collections.unmodifiableMap(params);
  }
}
