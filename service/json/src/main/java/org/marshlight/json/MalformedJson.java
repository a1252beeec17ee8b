package org.marshlight.json;

import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;

/** Thrown where bytes are not a JSON document at all, so that no field of it can be judged. */
public final class MalformedJson extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Fault fault;

  MalformedJson(String code, Object... params) {
    this(Fault.of(code, Pointer.ROOT, null, "one JSON document (RFC 8259) in UTF-8", params));
  }

  private MalformedJson(Fault fault) {
    super(fault.detail());
    this.fault = fault;
  }

  /** What is wrong, with line and column where they are known. */
  public Fault fault() {
    return fault;
  }
}
