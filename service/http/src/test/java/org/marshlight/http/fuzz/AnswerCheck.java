package org.marshlight.http.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.marshlight.http.words.Said;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** What must hold of the answer to any request at all. */
final class AnswerCheck {

  private static final double CLOSED = 1e-9;
  private static final Pattern NOT_FINITE = Pattern.compile("\\b(NaN|Infinity)\\b|\u221e");
  private static final Set<String> ALWAYS =
      Set.of("methane-explosion", "tank-atmosphere", "pathogens", "local-codes");

  private static final Map<String, Caution> CAUTIONS =
      CautionBook.standard().all().stream()
          .collect(
              Collectors.toMap(Caution::id, caution -> caution, (one, other) -> one, TreeMap::new));

  private final int status;
  private final String type;
  private final String body;
  private final Set<String> header;
  private final List<String> faults = new ArrayList<>();

  private AnswerCheck(HttpResponse<String> response) {
    this.status = response.statusCode();
    this.type = response.headers().firstValue("Content-Type").orElse("");
    this.body = response.body();
    this.header =
        new TreeSet<>(List.of(response.headers().firstValue("Cautions").orElse("").split(",\\s*")));
  }

  /** What does not hold of an answer; empty if everything does. */
  static List<String> faults(HttpResponse<String> response) {
    AnswerCheck check = new AnswerCheck(response);
    check.status();
    check.cautions();
    if (check.status == 200) {
      check.finite();
      check.balanced();
    }
    return check.faults;
  }

  private void status() {
    // a form of the page is refused as a page, with its entries kept
    boolean told = type.equals("application/problem+json") || type.startsWith("text/html");
    if (status != 200 && !(status >= 400 && status < 500 && told)) {
      faults.add("status " + status + " of " + type);
    }
  }

  private void finite() {
    var found = NOT_FINITE.matcher(body);
    if (found.find()) {
      int from = Math.max(0, found.start() - 120);
      faults.add("not finite: ..." + body.substring(from, found.end()));
    }
  }

  private void balanced() {
    if (!type.startsWith("application/json")) {
      return;
    }
    for (JsonNode balance : json(body).path("estimate").path("balances")) {
      if (!(Math.abs(balance.path("relativeResidual").asDouble()) <= CLOSED)) {
        faults.add("open balance: " + balance);
      }
    }
  }

  private void cautions() {
    if (!header.containsAll(ALWAYS)) {
      faults.add("header lacks cautions: " + header);
    }
    Set<String> lacking = new TreeSet<>(header);
    lacking.removeAll(inBody());
    if (!lacking.isEmpty()) {
      faults.add("body lacks cautions: " + lacking);
    }
  }

  private Set<String> inBody() {
    if (type.contains("ndjson")) {
      String[] lines = body.split("\n");
      Set<String> both = ids(json(lines[0]));
      both.retainAll(ids(json(lines[lines.length - 1])));
      return both;
    }
    if (type.contains("json")) {
      return ids(json(body));
    }
    return type.startsWith("text/csv") ? inTable() : inPage();
  }

  private static Set<String> ids(JsonNode document) {
    Set<String> ids = new TreeSet<>();
    document.path("cautions").forEach(caution -> ids.add(caution.path("id").asText()));
    return ids;
  }

  private Set<String> inTable() {
    try (CSVParser rows = CSVFormat.RFC4180.parse(new StringReader(body))) {
      return rows.stream()
          .filter(row -> row.get(0).equals("caution"))
          .map(row -> row.get(1))
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Set<String> inPage() {
    return CAUTIONS.values().stream()
        .filter(caution -> body.contains(Said.escaped(caution.hazard())))
        .map(Caution::id)
        .collect(Collectors.toSet());
  }

  private static JsonNode json(String text) {
    try {
      return SampleBodies.JSON.readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(text, e);
    }
  }
}
