package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.marshlight.contract.Assumption;
import org.marshlight.evidence.Source;
import org.marshlight.evidence.SourceList;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.Words;

/** What was taken as given, in small print: fields left out, overrides, coefficients, sources. */
final class Assumed {

  private static final String DEFAULT = "default";
  private static final String COEFFICIENT = "coefficient";

  private Assumed() {}

  static Part of(Sheet sheet, List<Assumption> assumptions) {
    List<Block> blocks = new ArrayList<>();
    List<Row> left = new ArrayList<>();
    List<Row> overrides = new ArrayList<>();
    List<Row> coefficients = new ArrayList<>();
    for (Assumption assumption : assumptions) {
      switch (assumption.code()) {
        case DEFAULT -> left.add(leftOut(sheet, assumption));
        case COEFFICIENT -> coefficients.add(number(sheet, assumption));
        default -> overrides.add(number(sheet, assumption));
      }
    }
    blocks.add(Block.saying(List.of(sheet.texts().html("assumed.meaning"))));
    blocks.add(table(sheet, "assumed.left-out", left));
    blocks.add(table(sheet, "assumed.overridden", overrides));
    blocks.add(table(sheet, "assumed.coefficients", coefficients));
    return Part.of("assumed", sheet.texts().plain("question.assumed"), blocks);
  }

  static Part sources(Sheet sheet, List<Assumption> assumptions) {
    TreeSet<String> ids = new TreeSet<>();
    assumptions.forEach(assumption -> ids.add(assumption.source()));
    List<Row> rows =
        ids.stream()
            .flatMap(id -> SourceList.standard().find(id).stream())
            .map(source -> Row.of(source.id(), List.of(citation(source))))
            .toList();
    return Part.of(
        "sources",
        sheet.texts().plain("question.sources"),
        List.of(
            Block.of(
                (String) null,
                sheet.table(null, List.of("table.source", "table.citation"), rows, "dense"))));
  }

  /** The page's name of a field; its meaning where the page does not show it. */
  static String label(Texts texts, String path, String meaning) {
    String key = "field." + path;
    return texts.has(key) ? texts.plain(key) : Words.label(meaning);
  }

  private static Block table(Sheet sheet, String heading, List<Row> rows) {
    return Block.of(
        sheet.texts().plain(heading),
        sheet.table(
            null,
            List.of("table.what", "table.value", "table.source", "table.mark"),
            rows,
            "dense"));
  }

  private static Row leftOut(Sheet sheet, Assumption assumption) {
    String path =
        assumption.pointer().substring(1).replaceAll("/\\d+(?=/|$)", "").replace('/', '.');
    String index = assumption.pointer().replaceAll("^.*?/(\\d+)/.*$|^.*$", "$1");
    String which = index.isEmpty() ? "" : " " + (Integer.parseInt(index) + 1);
    String section =
        path.contains(".")
            ? label(sheet.texts(), path.substring(0, path.lastIndexOf('.')), "") + which + ": "
            : "";
    return row(sheet, section + label(sheet.texts(), path, assumption.text()), assumption, path);
  }

  private static Row number(Sheet sheet, Assumption assumption) {
    return row(
        sheet,
        Words.label(assumption.text()) + " (" + assumption.id() + ")",
        assumption,
        assumption.id());
  }

  private static Row row(Sheet sheet, String head, Assumption assumption, String place) {
    String value =
        assumption.value() == null
            ? Words.spaced(assumption.id())
            : sheet.words().quantity(assumption.value(), assumption.unit(), place);
    return Row.of(head, List.of(value, assumption.source(), Words.spaced(assumption.mark())));
  }

  private static String citation(Source source) {
    String note = source.note() == null || source.note().isEmpty() ? "" : " " + source.note() + ".";
    return source.citation() + "." + note;
  }
}
