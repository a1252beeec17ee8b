package org.marshlight.http.problems;

import java.util.List;
import java.util.Map;
import org.marshlight.Problem;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.json.RecordReader;
import org.marshlight.safety.CautionBook;

/** Builds problem documents. None of them tells how the service is made. */
public final class Problems {

  /** Media type of every problem document. */
  public static final String MEDIA_TYPE = "application/problem+json";

  private Problems() {}

  /** A problem of which only the status is known. */
  public static Problem ofStatus(int status) {
    ProblemKind kind = ProblemKind.ofStatus(status);
    return of(kind, status, detail(kind, Map.of()), List.of());
  }

  /** The body is no JSON document. */
  public static Problem malformed(Fault fault) {
    ProblemKind kind = ProblemKind.MALFORMED_JSON;
    return of(kind, kind.status(), fault.detail(), List.of(fault));
  }

  /** Fields of the request are wrong. */
  public static Problem wrongFields(List<Fault> faults) {
    ProblemKind kind = ProblemKind.WRONG_FIELDS;
    List<Fault> told = faults.subList(0, Math.min(faults.size(), RecordReader.MOST_FAULTS));
    return of(kind, kind.status(), detail(kind, Params.of("count", faults.size())), told);
  }

  /** The service itself refuses. */
  public static Problem of(Refusal refusal) {
    ProblemKind kind = refusal.kind();
    return of(kind, kind.status(), detail(kind, refusal.params()), refusal.faults());
  }

  private static String detail(ProblemKind kind, Map<String, Object> params) {
    return Sentences.text("http." + kind.code(), params);
  }

  private static Problem of(ProblemKind kind, int status, String detail, List<Fault> faults) {
    return new Problem(
        "/problems#" + kind.code(),
        kind.title(),
        status,
        detail,
        kind.code(),
        faults,
        CautionBook.standard().general());
  }
}
