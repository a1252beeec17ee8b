package org.marshlight.contract;

import java.util.ArrayList;
import java.util.List;

/** Thrown where a request cannot be served; carries everything that is wrong with it. */
public final class Faults extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> list;

  public Faults(List<Fault> list) {
    super(list.toString());
    this.list = List.copyOf(list);
  }

  /**
   * What could not be read, followed by what is wrong with the rest. Of a field that could not be
   * read, of what holds it and of what it holds, nothing more is said: it is not there to be
   * judged.
   *
   * @param unreadable faults of form
   * @param others faults of range and of rules
   */
  public static List<Fault> joined(List<Fault> unreadable, List<Fault> others) {
    List<Fault> joined = new ArrayList<>(unreadable);
    for (Fault fault : others) {
      if (unreadable.stream().noneMatch(form -> concerns(form.pointer(), fault.pointer()))) {
        joined.add(fault);
      }
    }
    return List.copyOf(joined);
  }

  private static boolean concerns(String first, String second) {
    return (first + "/").startsWith(second + "/") || (second + "/").startsWith(first + "/");
  }

  /** Every fault found, in the order of the document. */
  public List<Fault> list() {
    return list;
  }
}
