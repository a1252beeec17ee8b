package org.marshlight.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;

/** Reads a real typical year and refuses spoilt ones, each with the line at fault. */
class WeatherFileTest {

  private static final List<String> LINES = TypicalYear.lines();

  @Test
  void aRealFileGivesTheMonthlyMeansOfTheCatalogue() {
    WeatherReading reading = read(lines -> lines);
    MonthlyNormals station =
        BuiltInClimates.standard().find("seattle-tacoma").orElseThrow().monthly();
    MonthlyNormals normals = reading.climate().monthly();
    for (int month = 0; month < 12; month++) {
      assertThat(normals.meanAirTemperatureC().get(month))
          .isCloseTo(station.meanAirTemperatureC().get(month), within(0.06));
      assertThat(normals.horizontalSolarKWhM2Day().get(month))
          .isCloseTo(station.horizontalSolarKWhM2Day().get(month), within(0.006));
      assertThat(normals.windMS().get(month)).isCloseTo(station.windMS().get(month), within(0.06));
    }
    assertThat(reading.place().latitudeDeg()).isEqualTo(47.47);
    assertThat(reading.hours().utcOffsetH()).isEqualTo(-8.0);
    assertThat(reading.hours().airTemperatureC()).hasSize(8760);
  }

  @Test
  void theHeadersGroundTemperaturesAreNotRead() {
    WeatherReading plain = read(lines -> lines);
    WeatherReading other =
        read(
            lines -> {
              lines.set(3, "GROUND TEMPERATURES,1,.5,,,,99,99,99,99,99,99,99,99,99,99,99,99");
              return lines;
            });
    assertThat(other).isEqualTo(plain);
  }

  @Test
  void aTruncatedFileNamesItsLastLine() {
    assertRefused(lines -> lines.subList(0, 5000), "climate.weather-file-truncated", 5000);
  }

  @Test
  void aShuffledFileNamesTheFirstHourOutOfOrder() {
    assertRefused(
        lines -> {
          String line = lines.get(1000);
          lines.set(1000, lines.get(1001));
          lines.set(1001, line);
          return lines;
        },
        "climate.weather-file-out-of-order",
        1001);
  }

  @Test
  void aLeapYearNamesTheLineOfItsLeapDay() {
    int afterFebruary = 8 + 59 * 24;
    assertRefused(
        lines -> {
          for (int hour = 24; hour >= 1; hour--) {
            String day = lines.get(afterFebruary - 24 + hour - 1);
            lines.add(afterFebruary, day.replaceFirst(",2,28,", ",2,29,"));
          }
          return lines;
        },
        "climate.weather-file-leap-year",
        afterFebruary + 1);
  }

  @Test
  void aSubHourlyFileIsToldByItsHeader() {
    assertRefused(
        lines -> {
          lines.set(7, "DATA PERIODS,1,4,Data,Sunday, 1/ 1,12/31");
          return lines;
        },
        "climate.weather-file-not-hourly",
        8);
  }

  @Test
  void aCharacterBeyondAsciiNamesItsLine() {
    assertRefused(
        lines -> {
          lines.set(300, lines.get(300) + "\u00e9");
          return lines;
        },
        "climate.weather-file-not-ascii",
        301);
  }

  @Test
  void textInAFieldNamesItsLine() {
    assertRefused(
        lines -> {
          String[] fields = lines.get(500).split(",", -1);
          fields[6] = "warm";
          lines.set(500, String.join(",", fields));
          return lines;
        },
        "climate.weather-file-not-a-number",
        501);
  }

  @Test
  void aShortGapIsBridgedAndSaid() {
    WeatherReading reading =
        read(
            lines -> {
              for (int line = 2000; line < 2003; line++) {
                String[] fields = lines.get(line).split(",", -1);
                fields[6] = "99.9";
                lines.set(line, String.join(",", fields));
              }
              return lines;
            });
    assertThat(reading.repairs()).anyMatch(r -> r.code().equals("climate.weather-file-bridged"));
    double before = reading.hours().airTemperatureC().get(1991);
    double after = reading.hours().airTemperatureC().get(1995);
    assertThat(reading.hours().airTemperatureC().get(1993))
        .isCloseTo((before + after) / 2, within(1e-9));
  }

  @Test
  void aLongGapIsRefused() {
    assertRefused(
        lines -> {
          for (int line = 2000; line < 2020; line++) {
            String[] fields = lines.get(line).split(",", -1);
            fields[13] = "9999";
            lines.set(line, String.join(",", fields));
          }
          return lines;
        },
        "climate.weather-file-gap",
        2001);
  }

  @Test
  void anotherKindOfTextIsRefused() {
    Faults faults =
        catchThrowableOfType(
            Faults.class,
            () -> WeatherFile.read("some notes\nof a day".getBytes(StandardCharsets.US_ASCII)));
    assertThat(faults.list().get(0).code()).isEqualTo("climate.weather-file-unknown");
  }

  @Test
  void tmy3TextGivesTheSameHours() {
    List<String> tmy3 = new ArrayList<>();
    tmy3.add("727930,\"SEATTLE\",WA,-8.0,47.467,-122.317,122");
    tmy3.add(
        "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dew-point (C),"
            + "Wspd (m/s)");
    for (String line : LINES.subList(8, LINES.size())) {
      String[] f = line.split(",", -1);
      tmy3.add(
          String.format(
              java.util.Locale.ROOT,
              "%02d/%02d/%s,%02d:00,%s,%s,%s,%s,%s",
              Integer.parseInt(f[1]),
              Integer.parseInt(f[2]),
              f[0],
              Integer.parseInt(f[3]),
              f[13],
              f[15],
              f[6],
              f[7],
              f[21]));
    }
    WeatherReading reading =
        WeatherFile.read(String.join("\n", tmy3).getBytes(StandardCharsets.US_ASCII));
    assertThat(reading.hours()).isEqualTo(read(lines -> lines).hours());
  }

  private static WeatherReading read(UnaryOperator<List<String>> change) {
    List<String> lines = change.apply(new ArrayList<>(LINES));
    return WeatherFile.read(String.join("\r\n", lines).getBytes(StandardCharsets.ISO_8859_1));
  }

  private static void assertRefused(UnaryOperator<List<String>> change, String code, int line) {
    Faults faults = catchThrowableOfType(Faults.class, () -> read(change));
    assertThat(faults).as(code).isInstanceOf(Faults.class);
    assertThat(faults.list()).hasSize(1);
    Fault fault = faults.list().get(0);
    assertThat(fault.code()).isEqualTo(code);
    assertThat(fault.params()).containsEntry("line", line);
    assertThat(fault.detail()).contains("ine " + line);
    assertThat(Arrays.asList(fault.allowed())).doesNotContain("");
  }
}
