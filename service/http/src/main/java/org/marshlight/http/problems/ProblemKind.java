package org.marshlight.http.problems;

import java.util.Arrays;
import org.marshlight.contract.WireName;

/** Every kind of problem document that the service gives. */
public enum ProblemKind {
  MALFORMED_JSON(400, "The body is not a JSON document"),
  WRONG_FIELDS(400, "Fields of the request are wrong"),
  BAD_REQUEST(400, "The request cannot be understood"),
  NOT_FOUND(404, "There is nothing here"),
  UNKNOWN_ID(404, "There is no item of this id"),
  METHOD_NOT_ALLOWED(405, "The path does not answer this method"),
  NOT_ACCEPTABLE(406, "The answer cannot be given in this form"),
  TOO_LARGE(413, "The body is too large"),
  TARGET_TOO_LONG(414, "The request target is too long"),
  UNSUPPORTED_MEDIA_TYPE(415, "The body is not of a type that is read here"),
  HEADERS_TOO_LARGE(431, "The headers are too large"),
  INTERNAL_ERROR(500, "The service failed"),
  OVERLOADED(503, "The service is busy"),
  STOPPING(503, "The service is stopping"),
  REFUSED(400, "The request was refused"),
  FAILED(500, "The request was not served");

  private final int status;
  private final String title;

  ProblemKind(int status, String title) {
    this.status = status;
    this.title = title;
  }

  /** HTTP status; of {@link #REFUSED} and {@link #FAILED}, only its class is fixed. */
  public int status() {
    return status;
  }

  public String title() {
    return title;
  }

  /** Stable name. */
  public String code() {
    return WireName.of(this);
  }

  /** The kind that stands for a status of which nothing more is known. */
  public static ProblemKind ofStatus(int status) {
    return switch (status) {
      case 400 -> BAD_REQUEST;
      case 404 -> NOT_FOUND;
      default ->
          Arrays.stream(values())
              .filter(kind -> kind.status == status)
              .findFirst()
              .orElse(status < 500 ? REFUSED : FAILED);
    };
  }
}
