package org.marshlight.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.CommittedFile;
import org.marshlight.evidence.SourceList;

/** Sets the growth model against stands that others measured, on the method page and here. */
class MeasuredStandsTest {

  private static final String PAGE = "docs/methods/crop.md";
  private static final String BEGIN = "<!-- measured stands: begin -->\n";
  private static final String END = "<!-- measured stands: end -->\n";

  @Test
  void theMethodPageShowsWhatTheModelGives() throws IOException {
    String page = Files.readString(Path.of(System.getProperty("repository")).resolve(PAGE));
    int from = page.indexOf(BEGIN) + BEGIN.length();
    CommittedFile.expect(
        PAGE, page.substring(0, from) + table() + page.substring(page.indexOf(END)));
  }

  /**
   * Fed stands that were not cut in summer lie no further than two fifths below and a third above
   * what was measured.
   */
  @Test
  void fedStandsComeNearWhatWasMeasured() {
    for (MeasuredStand stand : MeasuredStand.all()) {
      assertThat(SourceList.standard().find(stand.source())).as(stand.where()).isPresent();
      if (!stand.cutInAugust()) {
        assertThat(stand.modelled())
            .as(stand.where())
            .isBetween(stand.low() * 0.6, stand.high() * 1.33);
      }
    }
  }

  private static String table() {
    StringBuilder text = new StringBuilder();
    text.append("| stand | what | measured | modelled | within? | source |\n");
    text.append("|---|---|---|---|---|---|\n");
    for (MeasuredStand stand : MeasuredStand.all()) {
      double modelled = stand.modelled();
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %s |%n".replace("%n", "\n"),
              stand.where(),
              stand.what(),
              range(stand),
              number(modelled),
              verdict(stand, modelled),
              stand.source()));
    }
    return text.toString();
  }

  private static String range(MeasuredStand stand) {
    return stand.low() == stand.high()
        ? number(stand.low())
        : number(stand.low()) + " to " + number(stand.high());
  }

  private static String number(double value) {
    return value < 100
        ? String.format(Locale.ROOT, "%.1f", value)
        : String.format(Locale.ROOT, "%.0f", value);
  }

  private static String verdict(MeasuredStand stand, double modelled) {
    if (modelled < stand.low()) {
      return String.format(Locale.ROOT, "%.0f %% below", 100 * (1 - modelled / stand.low()));
    }
    if (modelled > stand.high()) {
      return String.format(Locale.ROOT, "%.0f %% above", 100 * (modelled / stand.high() - 1));
    }
    return "yes";
  }
}
