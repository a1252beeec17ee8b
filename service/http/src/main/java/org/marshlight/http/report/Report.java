package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a report shows, in words.
 *
 * @param name name of the plan
 * @param units wire name of the system of units
 * @param dangers cautions of the gravest kind, shown first and whole
 * @param cautions the other cautions
 * @param shortly the few figures that tell most
 * @param verdicts whether each part is worth building
 * @param parts parts in the order of the flow
 * @param notices remarks
 * @param annexes plan, assumptions, sources and further figures
 * @param version version of the engine
 * @param planSha256 hash of the plan as sent
 */
public record Report(
    String name,
    String units,
    List<Told> dangers,
    List<Told> cautions,
    List<Block.Figure> shortly,
    List<WorthPart.Card> verdicts,
    List<Part> parts,
    List<RawString> notices,
    List<Part> annexes,
    String version,
    String planSha256) {

  /** Whether it is told in US customary units, which the engine's sentences are not. */
  public boolean customary() {
    return !units.equals("si");
  }

  /** What titles and endings name. */
  public Map<String, String> stamp() {
    return Map.of("name", name, "version", version);
  }

  /** The part of that id; null if the plan has none. */
  public Part part(String id) {
    return Stream.concat(parts.stream(), annexes.stream())
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElse(null);
  }

  /**
   * A caution.
   *
   * @param severity how grave it is
   * @param hazard what it warns of
   * @param text what it says
   */
  public record Told(String severity, RawString hazard, RawString text) {}
}
