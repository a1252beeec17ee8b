package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.drawing.FlowDiagram;
import org.marshlight.http.drawing.FlowDiagram.Ribbon;
import org.marshlight.http.report.Block.Chart;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;
import org.marshlight.loop.Closure;
import org.marshlight.loop.Flow;

/** What goes where, a diagram for each quantity, and how closed the loop is. */
final class FlowsPart {

  private static final List<String> QUANTITIES =
      List.of("water", "nitrogen", "phosphorus", "potassium", "carbon");

  private static final String ENERGY = "energy";
  private static final int MOST_LOSSES = 4;

  /** Of the greatest flow; less is no more than rounding of what cancels out. */
  private static final double LEAST_SHARE = 1e-9;

  private FlowsPart() {}

  static Part of(Sheet sheet, PlanEstimate estimate) {
    List<Block> blocks = new ArrayList<>();
    for (String quantity : QUANTITIES) {
      List<Ribbon> ribbons =
          estimate.flows().stream()
              .filter(flow -> flow.quantity().equals(quantity))
              .map(flow -> new Ribbon(flow.from(), flow.to(), flow.perYear()))
              .toList();
      blocks.add(diagram(sheet, quantity, "kg", ribbons, processes(ribbons)));
    }
    blocks.add(diagram(sheet, ENERGY, "kW.h", Energies.of(estimate), Energies.PROCESSES));
    return Part.of("flows", sheet.texts().plain("question.flows"), blocks);
  }

  static Part closure(Sheet sheet, PlanEstimate estimate) {
    List<Row> rows = new ArrayList<>();
    for (Closure closure : estimate.closure()) {
      rows.add(
          Row.of(
              sheet.texts().plain("quantity." + closure.quantity()),
              List.of(
                  closure.returnedFraction() == null
                      ? Words.NONE
                      : Words.digits(100 * closure.returnedFraction()) + "\u00a0%",
                  losses(sheet, closure.losses()))));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.of(
            (String) null,
            sheet.table(
                null, List.of("table.quantity", "table.returned", "table.losses"), rows, "")));
    return Part.of("closure", sheet.texts().plain("question.closure"), blocks);
  }

  static Part balances(Sheet sheet, PlanEstimate estimate) {
    return Part.of(
        "balances",
        sheet.texts().plain("question.balances"),
        List.of(
            Block.saying(List.of(sheet.texts().html("balances.meaning"))),
            Block.of(
                (String) null,
                sheet.grid(
                    null,
                    estimate.balances(),
                    "quantity",
                    "scope",
                    "in",
                    "out",
                    "stored",
                    "relativeResidual"))));
  }

  private static Block diagram(
      Sheet sheet, String quantity, String ucum, List<Ribbon> all, List<String> processes) {
    double most = all.stream().mapToDouble(Ribbon::amount).max().orElse(0);
    List<Ribbon> ribbons =
        Ribbon.joined(all).stream().filter(r -> r.amount() > LEAST_SHARE * most).toList();
    if (ribbons.isEmpty()) {
      return Block.saying(List.of());
    }
    String name = "flow-" + quantity;
    String caption =
        sheet
            .texts()
            .plain("chart.flow", Map.of("quantity", sheet.texts().plain("quantity." + quantity)));
    FlowDiagram diagram =
        new FlowDiagram(
            name,
            caption + ". " + sheet.texts().plain("chart.table-below"),
            ribbons,
            processes,
            party -> party(sheet, party),
            amount -> sheet.words().quantity(amount, ucum, "flow"));
    List<Row> rows =
        ribbons.stream()
            .sorted(Comparator.comparingDouble(r -> -r.amount()))
            .map(
                r ->
                    Row.of(
                        party(sheet, r.from()),
                        List.of(
                            party(sheet, r.to()),
                            sheet.words().quantity(r.amount(), ucum, "flow"))))
            .toList();
    return Block.of(
        new Chart(
            name,
            caption,
            new RawString(diagram.svg()),
            List.of(),
            sheet.table(
                caption, List.of("table.from", "table.to", "table.per-year"), rows, "dense"),
            true));
  }

  /** Processes in the order of the flow, beds as many as there are. */
  private static List<String> processes(List<Ribbon> ribbons) {
    List<String> processes = new ArrayList<>(List.of("tank", "gas-store"));
    ribbons.stream()
        .flatMap(r -> java.util.stream.Stream.of(r.from(), r.to()))
        .filter(party -> party.startsWith("bed-"))
        .distinct()
        .sorted(Comparator.comparingInt(bed -> Integer.parseInt(bed.substring(4))))
        .forEach(processes::add);
    processes.add("still");
    processes.add("heap");
    return processes;
  }

  private static String losses(Sheet sheet, List<Flow> losses) {
    List<String> told = new ArrayList<>();
    for (Flow loss : losses.subList(0, Math.min(MOST_LOSSES, losses.size()))) {
      told.add(
          sheet
              .texts()
              .plain(
                  "closure.loss",
                  Map.of(
                      "from", party(sheet, loss.from()),
                      "to", party(sheet, loss.to()),
                      "amount", sheet.words().quantity(loss.perYear(), loss.unit(), "flow"))));
    }
    return String.join("; ", told);
  }

  /** What a party is called. */
  static String party(Sheet sheet, String party) {
    if (party.startsWith("bed-")) {
      return sheet.texts().plain("party.bed", Map.of("number", party.substring(4)));
    }
    String key = "party." + party;
    return sheet.texts().has(key) ? sheet.texts().plain(key) : Words.spaced(party);
  }
}
