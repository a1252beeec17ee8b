package org.marshlight.http.door;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.marshlight.http.catalogues.CatalogueRoutes;
import org.marshlight.http.tables.AnswerCsv;

/**
 * What a path takes and gives. The contract's tests hold these rows to the routes themselves.
 *
 * @param path paths of this kind
 * @param methods methods that they answer
 * @param takes media type of a body; empty where none is read
 * @param gives media types of answers, the usual one first
 * @param mostBytes largest body that is read
 * @param queries names of the parameters that its query may have
 */
public record Surface(
    Pattern path,
    List<String> methods,
    String takes,
    List<String> gives,
    int mostBytes,
    Set<String> queries) {

  private static final int MEBIBYTE = 1024 * 1024;
  private static final String ID = "[^/]+";
  private static final String BELOW_A_LIST = "^(/v1/[^/]+)/[^/]+/?$";
  private static final String JSON = "application/json";
  private static final String LINES = "application/x-ndjson";
  private static final String HTML = "text/html";
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final List<String> READ = List.of("GET", "HEAD", "OPTIONS");
  private static final List<String> WORK = List.of("POST", "OPTIONS");

  private static final List<Surface> ALL =
      List.of(
          of(
                  "/v1/estimates/(digester|wetland|crop|ethanol|compost|loop)",
                  WORK,
                  JSON,
                  JSON,
                  AnswerCsv.MEDIA_TYPE,
                  HTML)
              .asked("units", "working"),
          of(
                  "/v1/studies/(uncertainty|sensitivity|sizing|comparison|calibration|break-even"
                      + "|build-order)",
                  WORK,
                  JSON,
                  JSON,
                  LINES)
              .asked("costOnly"),
          of("/v1/studies/sweep", WORK, JSON, JSON, LINES, AnswerCsv.MEDIA_TYPE).asked("costOnly"),
          of("/v1/formulas/" + ID, List.of("GET", "HEAD", "POST", "OPTIONS"), JSON, JSON),
          of("/v1/climates/from-weather-file", WORK, "text/plain", JSON)
              .reading(4 * MEBIBYTE)
              .asked("hours"),
          of("/v1/(" + CatalogueRoutes.NAMES + ")(/" + ID + ")?", READ, "", JSON),
          of("/report", WORK, FORM, HTML).asked("units"),
          of("/problems", READ, "", HTML),
          of("", READ, "", HTML).asked("units"));

  /** What a path takes and gives, if it is one of ours. */
  static Optional<Surface> at(String path) {
    return ALL.stream().filter(surface -> surface.path().matcher(path).matches()).findFirst();
  }

  /** Largest body that a path reads, in bytes, whether it is one of ours or not. */
  public static int mostBytes(String path) {
    return at(path).map(Surface::mostBytes).orElse(MEBIBYTE);
  }

  /** Names of the parameters that the query of a path may have; none if it is not one of ours. */
  public static Set<String> queriesOf(String path) {
    return at(path).map(Surface::queries).orElse(Set.of());
  }

  /** The path with an id in it, if there is one, told as such. */
  String route(String request) {
    return path.pattern().contains(ID) ? request.replaceFirst(BELOW_A_LIST, "$1/{id}") : request;
  }

  private static Surface of(String path, List<String> methods, String takes, String... gives) {
    return new Surface(
        Pattern.compile(path + "/?"), methods, takes, List.of(gives), MEBIBYTE, Set.of());
  }

  private Surface reading(int bytes) {
    return new Surface(path, methods, takes, gives, bytes, queries);
  }

  private Surface asked(String... names) {
    return new Surface(path, methods, takes, gives, mostBytes, Set.of(names));
  }
}
