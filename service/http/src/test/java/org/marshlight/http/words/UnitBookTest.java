package org.marshlight.http.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import javax.measure.IncommensurableException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;

/** Every conversion of {@code units.csv} against an independent library of UCUM units. */
class UnitBookTest {

  private static final UCUMFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

  /** UCUM's degree Rankine, a step of one degree Fahrenheit, which the library does not know. */
  private static final String RANKINE = "[degR]";

  private static final double[] NUMBERS = {-40, 0, 1, 7, 1234.5};

  static List<CSVRecord> rows() throws IOException {
    try (Reader reader =
        new InputStreamReader(
            UnitBook.class.getResourceAsStream("units.csv"), StandardCharsets.UTF_8)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(reader)
          .getRecords();
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void numbersAreConvertedAsTheLibraryConvertsThem(CSVRecord row) throws Exception {
    String ucum = row.get("ucum");
    String place = row.get("where").isEmpty() ? "" : "gas";
    Unit unit = UnitBook.of(ucum, place, UnitSystem.US_CUSTOMARY);
    assertThat(unit.ucum()).isEqualTo(row.get("usUcum"));
    assertThat(unit.printed()).isEqualTo(row.get("usPrinted"));
    for (double number : NUMBERS) {
      double expected = converted(number, ucum, unit.ucum());
      assertThat(unit.of(number))
          .as("%s %s in %s", number, ucum, unit.ucum())
          .isCloseTo(expected, within(1e-9 * Math.abs(expected)));
    }
  }

  private static double converted(double number, String from, String to)
      throws IncommensurableException {
    double inKelvins = library(number, from, to.replace(RANKINE, "K"));
    if (!to.contains(RANKINE)) {
      return inKelvins;
    }
    double perKelvin = library(1, "Cel", "[degF]") - library(0, "Cel", "[degF]");
    boolean divisor = to.contains("/") && to.indexOf('/') < to.indexOf(RANKINE);
    return divisor ? inKelvins / perKelvin : inKelvins * perKelvin;
  }

  private static double library(double number, String from, String to)
      throws IncommensurableException {
    return from.equals(to)
        ? number
        : UCUM.parse(from).getConverterToAny(UCUM.parse(to)).convert(number);
  }

  /**
   * What the page's scripts compute with: the same factors, in the order in which they are tried.
   */
  @Test
  void theScriptsGetTheSameFactors() throws IOException {
    List<?> scripts = (List<?>) UnitBook.forScripts().get("rows");
    List<CSVRecord> rows = rows();
    assertThat(scripts).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      Map<?, ?> script = (Map<?, ?>) scripts.get(i);
      for (String factor : List.of("times", "over", "offset")) {
        assertThat(script.get(factor)).isEqualTo(Double.valueOf(rows.get(i).get(factor)));
      }
      assertThat(script.get("ucum")).isEqualTo(rows.get(i).get("ucum"));
      assertThat(script.get("where")).isEqualTo(rows.get(i).get("where"));
    }
  }

  /** Fixed points of the scales. */
  @ParameterizedTest
  @CsvSource({"0, 32", "100, 212", "-40, -40", "37, 98.6"})
  void temperaturesAreShownInFahrenheit(double celsius, double fahrenheit) {
    assertThat(UnitBook.of("Cel", "", UnitSystem.US_CUSTOMARY).of(celsius)).isEqualTo(fahrenheit);
    assertThat(UnitBook.of("Cel", "", UnitSystem.SI).of(celsius)).isEqualTo(celsius);
  }

  @Test
  void waterIsTakenInGallonsAndGasInCubicFeet() {
    assertThat(UnitBook.of("m3", "tank.liquidVolumeM3", UnitSystem.US_CUSTOMARY).ucum())
        .isEqualTo("[gal_us]");
    assertThat(UnitBook.of("m3", "digester.annual.methaneNm3", UnitSystem.US_CUSTOMARY).ucum())
        .isEqualTo("[cft_i]");
    assertThat(UnitBook.of("m3", "gas.storeM3", UnitSystem.SI).ucum()).isEqualTo("m3");
  }
}
