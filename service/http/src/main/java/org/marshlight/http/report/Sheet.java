package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.SourceList;
import org.marshlight.http.drawing.BarList;
import org.marshlight.http.drawing.MonthChart;
import org.marshlight.http.drawing.Series;
import org.marshlight.http.report.Block.Chart;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.report.Block.Table;
import org.marshlight.http.tables.FigureUnit;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitBook;
import org.marshlight.http.words.Words;

/**
 * What the parts of a report are written on: it knows the reader's units and language, takes labels
 * and units of figures from their records, and remembers which figures were shown, so that none is
 * shown twice.
 */
final class Sheet {

  private static final Pattern ID = Pattern.compile("[a-z]+(-[a-z0-9]+)+");

  private final Words words;
  private final Texts texts;
  private final Set<String> shown = new HashSet<>();

  Sheet(Words words, Texts texts) {
    this.words = words;
    this.texts = texts;
  }

  Words words() {
    return words;
  }

  Texts texts() {
    return texts;
  }

  /** Whether a figure was shown already. */
  boolean wasShown(Record owner, RecordShape.Field field) {
    return shown.contains(key(owner.getClass(), field.name()));
  }

  /** Marks a figure as shown in some other way. */
  void show(Class<? extends Record> owner, String... names) {
    for (String name : names) {
      shown.add(key(owner, name));
    }
  }

  /** Figures of a record by name, with their labels and units. */
  List<Figure> figures(Record owner, String... names) {
    List<Figure> figures = new ArrayList<>();
    for (String name : names) {
      figures.add(figure(owner, field(owner, name)));
    }
    return figures;
  }

  /** One figure as its record tells it. */
  Figure figure(Record owner, RecordShape.Field field) {
    show(owner.getClass().asSubclass(Record.class), field.name());
    return peek(owner, field);
  }

  /** Each value of a list as it is printed. */
  List<String> each(Record owner, RecordShape.Field field) {
    String ucum = FigureUnit.of(owner, field);
    return ((List<?>) field.of(owner))
        .stream()
            .map(value -> words.value(value, ucum.isEmpty() ? "1" : ucum, place(owner, field)))
            .toList();
  }

  /** The same without marking it as shown. */
  Figure peek(Record owner, RecordShape.Field field) {
    String ucum = FigureUnit.of(owner, field);
    String place = place(owner, field);
    return new Figure(
        Words.label(field.meaning()),
        value(field.of(owner), ucum.isEmpty() ? "1" : ucum, place),
        ucum.isEmpty() ? "" : words.unit(ucum, place));
  }

  /** A value as it is printed; ids are printed as words, except those of the list of sources. */
  String value(Object value, String ucum, String place) {
    return value instanceof String text && ID.matcher(text).matches() && !isSource(text)
        ? Words.spaced(text)
        : words.value(value, ucum, place);
  }

  private static boolean isSource(String id) {
    return SourceList.standard().find(id).isPresent();
  }

  /** A figure under a label of the report's own. */
  Figure figure(String key, Double value, String ucum, String place) {
    return new Figure(texts.plain(key), words.number(value, ucum, place), words.unit(ucum, place));
  }

  /** A number in the reader's unit. */
  double amount(double value, String ucum, String place) {
    return UnitBook.of(ucum, place, words.system()).of(value);
  }

  /** Twelve values of a record in the reader's unit. */
  Series series(String key, Series.Kind kind, Record owner, String name) {
    RecordShape.Field field = field(owner, name);
    show(owner.getClass().asSubclass(Record.class), name);
    var unit = UnitBook.of(FigureUnit.of(owner, field), place(owner, field), words.system());
    List<Double> shownValues = new ArrayList<>();
    for (Object value : (List<?>) field.of(owner)) {
      shownValues.add(
          value == null ? null : Double.valueOf(unit.of(((Number) value).doubleValue())));
    }
    return new Series(texts.plain(key), kind, shownValues);
  }

  /** The same level in every month. */
  Series level(String key, double value, String ucum, String place) {
    double level = UnitBook.of(ucum, place, words.system()).of(value);
    return new Series(
        texts.plain(key), Series.Kind.LIMIT, IntStream.range(0, 12).mapToObj(m -> level).toList());
  }

  /** A chart of months with the table behind it; null where there is nothing to draw. */
  Block months(String name, String ucum, String place, List<Series> all, boolean powers) {
    List<Series> series =
        all.stream().filter(s -> s.kind() == Series.Kind.LINE || !s.empty()).toList();
    String unit = words.unit(ucum, place);
    MonthChart chart =
        new MonthChart(
            name,
            texts.plain("chart." + name) + ". " + texts.plain("chart.table-below"),
            unit,
            monthNames(),
            series,
            powers);
    return Block.of(
        new Chart(
            name,
            texts.plain("chart." + name),
            new RawString(chart.svg()),
            chart.key(),
            monthTable(texts.plain("chart." + name), unit, series),
            false));
  }

  /** A chart of a few amounts with the table behind it. */
  Block bars(String name, String ucum, String place, List<BarList.Bar> bars) {
    String unit = words.unit(ucum, place);
    String caption = texts.plain("chart." + name);
    BarList chart =
        new BarList(name, caption + ". " + texts.plain("chart.table-below"), unit, bars);
    List<Row> rows =
        bars.stream()
            .map(bar -> Row.of(bar.name(), List.of(Words.digits(bar.value()), unit)))
            .toList();
    return Block.of(
        new Chart(
            name,
            caption,
            new RawString(chart.svg()),
            List.of(),
            table(caption, List.of("table.what", "table.amount", "table.unit"), rows, ""),
            false));
  }

  /** A table whose heads are texts of the bundle. */
  Table table(String caption, List<String> heads, List<Row> rows, String kind) {
    return new Table(caption, heads.stream().map(texts::plain).toList(), rows, kind);
  }

  /** A table of like records with some of their figures as columns. */
  Table grid(String caption, List<? extends Record> records, String... names) {
    List<String> heads = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (Record owner : records) {
      List<String> cells = new ArrayList<>();
      for (String name : names) {
        RecordShape.Field field = field(owner, name);
        Figure figure = figure(owner, field);
        boolean beside =
            field.quantity().map(Quantity::unit).filter(Quantity.UNIT_BESIDE::equals).isPresent();
        if (rows.isEmpty()) {
          heads.add(
              figure.unit().isEmpty() || beside
                  ? figure.label()
                  : figure.label() + " (" + figure.unit() + ")");
        }
        cells.add(
            beside && !figure.value().equals(Words.NONE)
                ? (figure.value() + "\u00a0" + figure.unit()).trim()
                : figure.value());
      }
      rows.add(Row.of(cells.get(0), cells.subList(1, cells.size())));
    }
    return new Table(caption, heads, rows, "");
  }

  /** Short names of the months. */
  List<String> monthNames() {
    return IntStream.rangeClosed(1, 12).mapToObj(m -> texts.plain("month." + m)).toList();
  }

  /** A sentence of the bundle as markup. */
  RawString say(String key, Map<String, ?> places) {
    return texts.html(key, places);
  }

  private Table monthTable(String caption, String unit, List<Series> series) {
    List<String> heads = new ArrayList<>();
    heads.add(unit.isEmpty() ? texts.plain("table.what") : unit);
    heads.addAll(monthNames());
    List<Row> rows =
        series.stream()
            .map(s -> Row.of(s.name(), s.values().stream().map(Words::text).toList()))
            .toList();
    return new Table(caption, heads, rows, "months");
  }

  static RecordShape.Field field(Record owner, String name) {
    return RecordShape.of(owner.getClass())
        .field(name)
        .orElseThrow(() -> new IllegalArgumentException(owner.getClass() + " has no " + name));
  }

  /** Where a figure stands, by the package that it comes from; water and gas differ by it. */
  static String place(Record owner, RecordShape.Field field) {
    String pack = owner.getClass().getPackageName();
    return pack.substring(pack.lastIndexOf('.') + 1)
        + "."
        + owner.getClass().getSimpleName()
        + "."
        + field.name();
  }

  private static String key(Class<?> owner, String name) {
    return owner.getName() + "." + name;
  }
}
