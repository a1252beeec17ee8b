package org.marshlight.study;

import java.util.LinkedHashMap;
import java.util.Map;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;

/** Says of a fault which variant it is in. */
public final class VariantFault {

  private VariantFault() {}

  /**
   * The same fault with the name of its variant.
   *
   * @param fault what is wrong
   * @param variant name of the variant; null if it has none
   * @param prefix where the variant's plan stands
   */
  public static Fault of(Fault fault, String variant, String prefix) {
    String name = String.valueOf(variant);
    Map<String, Object> params = new LinkedHashMap<>(fault.params());
    params.put("variant", name);
    String detail =
        Sentences.text("study.in-variant", Params.of("variant", name, "detail", fault.detail()));
    return new Fault(
        fault.code(), prefix + fault.pointer(), fault.rejected(), detail, fault.allowed(), params);
  }
}
