package org.marshlight.contract;

import java.util.List;

/** Thrown where a request cannot be served; carries everything that is wrong with it. */
public final class Faults extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> list;

  public Faults(List<Fault> list) {
    super(list.toString());
    this.list = List.copyOf(list);
  }

  /** Every fault found, in the order of the document. */
  public List<Fault> list() {
    return list;
  }
}
