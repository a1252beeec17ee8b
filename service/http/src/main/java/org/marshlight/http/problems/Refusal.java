package org.marshlight.http.problems;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;

/** Thrown where the service itself, rather than the engine, refuses a request. */
public final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** As much of a parameter's name as a sentence repeats. */
  private static final int LONGEST_NAME = 60;

  private final ProblemKind kind;
  private final transient Map<String, Object> params;
  private final transient List<Fault> faults;

  private Refusal(ProblemKind kind, Map<String, Object> params, List<Fault> faults) {
    super(kind.title());
    this.kind = kind;
    this.params = params;
    this.faults = List.copyOf(faults);
  }

  /** Too much is going on already. */
  public static Refusal overloaded() {
    return new Refusal(ProblemKind.OVERLOADED, Map.of(), List.of());
  }

  /** The service was asked to stop. */
  public static Refusal stopping() {
    return new Refusal(ProblemKind.STOPPING, Map.of(), List.of());
  }

  /** A catalogue has no item of that id. */
  public static Refusal unknownId(String catalogue, String id, Collection<String> known) {
    Fault fault =
        Fault.unknown(
            "http.unknown-id",
            Pointer.ROOT,
            id,
            id,
            known,
            "an id of /v1/" + catalogue,
            "catalogue",
            catalogue);
    return new Refusal(ProblemKind.UNKNOWN_ID, fault.params(), List.of(fault));
  }

  /** A parameter of the query is wrong. */
  public static Refusal query(String name, String rejected, String allowed) {
    Fault fault =
        Fault.of("http.query", Pointer.ROOT, rejected, allowed, "name", name, "allowed", allowed);
    return new Refusal(ProblemKind.BAD_REQUEST, Map.of(), List.of(fault));
  }

  /**
   * The query has a parameter that the path does not know.
   *
   * @param name name of the parameter
   * @param known names of those that the path has
   */
  public static Refusal unknownQuery(String name, Collection<String> known) {
    String allowed = known.isEmpty() ? "none" : String.join(", ", new TreeSet<>(known));
    Fault fault =
        Fault.of(
            "http.unknown-query",
            Pointer.ROOT,
            name,
            allowed,
            "name",
            shortened(name),
            "allowed",
            allowed);
    return new Refusal(ProblemKind.BAD_REQUEST, Map.of(), List.of(fault));
  }

  private static String shortened(String name) {
    return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) + "..." : name;
  }

  ProblemKind kind() {
    return kind;
  }

  Map<String, Object> params() {
    return params;
  }

  List<Fault> faults() {
    return faults;
  }
}
