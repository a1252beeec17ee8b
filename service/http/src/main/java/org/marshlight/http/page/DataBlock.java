package org.marshlight.http.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.marshlight.json.ContractJson;

/** JSON that stands inside a page as data, and cannot end the element that holds it. */
final class DataBlock {

  private DataBlock() {}

  static String of(Object value) {
    try {
      return ContractJson.mapper()
          .writeValueAsString(value)
          .replace("&", "\\u0026")
          .replace("<", "\\u003c");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
