package org.marshlight.http.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.marshlight.Answer;
import org.marshlight.Meta;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** The table of an answer, figure by figure. */
class AnswerCsvTest {

  public record Estimate(Stage stage, List<Line> lines, Map<String, Object> params) {}

  public record Stage(
      @TwelveMonths @Quantity(unit = "Cel", min = -60, max = 60, meaning = "Warmth.")
          List<Double> warmthC,
      @Quantity(unit = "kW.h", min = 0, max = 10, meaning = "Energy.") Double energyKWh,
      @Quantity(unit = "1", min = 0, max = 10, meaning = "Count.") int count,
      Caution.Severity choice,
      String text) {}

  public record Line(
      @Quantity(unit = Quantity.UNIT_BESIDE, min = 0, max = 9, meaning = "Amount.") double amount,
      String unit) {}

  @Test
  void everyFigureIsARowOfSixColumns() throws IOException {
    String csv = AnswerCsv.text(answer("plain"), UnitSystem.SI);
    assertThat(csv).startsWith("kind,id,month,value,unit,text\r\n").endsWith("\r\n");
    List<CSVRecord> rows = rows(csv);
    assertThat(rows).allMatch(row -> row.size() == 6);
    assertThat(rows.stream().map(CSVRecord::toList).map(row -> String.join("|", row)))
        .contains(
            "value|stage.warmthC|1|-2.5|Cel|",
            "value|stage.warmthC|2||Cel|",
            "value|stage.warmthC|12|1.0E-5|Cel|",
            "value|stage.energyKWh|||kW.h|",
            "value|stage.count||3|1|",
            "value|stage.choice||||warning",
            "value|stage.text||||plain",
            "value|lines.0.amount||4.0|m3|",
            "value|lines.1.amount||0.1|kg|",
            "value|params.share||0.25||",
            "value|assumptions.feed.x||7.0|kg/d|seven (house-choice, assumed)",
            "notice|feed.odd||||odd, \"quoted\"\nand broken",
            "value|meta.version||||" + Meta.VERSION)
        .doesNotContain("value|lines.0.unit||||m3");
    assertThat(rows.get(1).get(0)).isEqualTo("caution");
  }

  @Test
  void noTextIsTakenForAFormula() throws IOException {
    for (String text : new String[] {"=1+1", "+1", "-1", "@sum", "\tx", "\rx"}) {
      List<CSVRecord> rows = rows(AnswerCsv.text(answer(text), UnitSystem.SI));
      assertThat(rows.stream().filter(row -> row.get(1).equals("stage.text")))
          .allMatch(row -> row.get(5).equals("'" + text));
    }
    assertThat(CsvCell.text("a=b")).isEqualTo("a=b");
  }

  private static Answer<Estimate> answer(String text) {
    List<Double> months =
        Arrays.asList(-2.5, null, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 1.0, 1.1, 1e-5);
    return new Answer<>(
        new Estimate(
            new Stage(months, null, 3, Caution.Severity.WARNING, text),
            List.of(new Line(4, "m3"), new Line(0.1, "kg")),
            Map.of("share", 0.25)),
        CautionBook.standard().general(),
        List.of(
            new Assumption(
                "default", "feed.x", "/feeds/0", "seven", 7.0, "kg/d", "house-choice", "assumed")),
        List.of(
            new Notice(
                "feed.odd", Notice.Severity.REMARK, "odd, \"quoted\"\nand broken", Map.of())),
        Meta.WITHOUT_PLAN);
  }

  private static List<CSVRecord> rows(String csv) throws IOException {
    try (var parser = CSVFormat.RFC4180.parse(new StringReader(csv))) {
      return parser.getRecords();
    }
  }
}
