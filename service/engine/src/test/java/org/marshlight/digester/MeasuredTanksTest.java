package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.CommittedFile;
import org.marshlight.evidence.SourceList;

/** Sets the tank model against what others measured, on the method page and here. */
class MeasuredTanksTest {

  private static final String PAGE = "docs/methods/methane.md";
  private static final String BEGIN = "<!-- measured tanks: begin -->\n";
  private static final String END = "<!-- measured tanks: end -->\n";

  @Test
  void theMethodPageShowsWhatTheModelGives() throws IOException {
    String page = Files.readString(Path.of(System.getProperty("repository")).resolve(PAGE));
    int from = page.indexOf(BEGIN) + BEGIN.length();
    CommittedFile.expect(
        PAGE, page.substring(0, from) + table() + page.substring(page.indexOf(END)));
  }

  @Test
  void everyCaseNamesItsSource() {
    for (MeasuredTank tank : MeasuredTank.all()) {
      assertThat(SourceList.standard().find(tank.source())).as(tank.what()).isPresent();
    }
  }

  /** Within three points of a hundred of the band, between 15 and 35 Cel. */
  @Test
  void gasAnswersToWarmthAsStirredDairyDigestersDid() {
    List<MeasuredTank> dairy =
        MeasuredTank.all().stream()
            .filter(tank -> tank.source().equals("dairy-digesters-2015"))
            .toList();
    assertThat(dairy).hasSize(2);
    for (MeasuredTank tank : dairy) {
      assertThat(tank.modelled()).as(tank.what()).isBetween(tank.low() - 0.03, tank.high() + 0.03);
    }
  }

  private static String table() {
    StringBuilder text = new StringBuilder();
    text.append("| measured | value | modelled | modelled over measured | assumed | source |\n");
    text.append("|---|---|---|---|---|---|\n");
    for (MeasuredTank tank : MeasuredTank.all()) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %s | %s | %s |\n",
              tank.what(),
              tank.low() == tank.high()
                  ? number(tank.low())
                  : number(tank.low()) + " to " + number(tank.high()),
              number(tank.modelled()),
              ratio(tank),
              tank.assumed(),
              tank.source()));
    }
    return text.toString();
  }

  private static String ratio(MeasuredTank tank) {
    if (tank.modelled() >= tank.low() && tank.modelled() <= tank.high()) {
      return "within";
    }
    double nearest = tank.modelled() < tank.low() ? tank.low() : tank.high();
    return String.format(Locale.ROOT, "%.2f of the nearer end", tank.modelled() / nearest);
  }

  private static String number(double value) {
    return value < 10
        ? String.format(Locale.ROOT, "%.2f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
