package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.marshlight.Marshlight;
import org.marshlight.contract.Months;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.evidence.Catalogues;
import org.marshlight.loop.Stage;

/** The answer's oxygen demands of what enters a tank and of what leaves it fit each other. */
class TankOxygenDemandTest {

  /** Of an invented household of four that feeds its five cubic metres well. */
  @Test
  void noFeedMakesTheTankGiveMoreOxygenDemandThanItGets() {
    for (String feed : Catalogues.standard().ids("feeds")) {
      for (double freshKg : new double[] {2, 20}) {
        DigesterEstimate tank = tank(feed, freshKg);
        double in = tank.load().bod5KgPerDay() * Months.DAYS_PER_YEAR;
        double out = 0;
        double cod = 0;
        for (int month = 0; month < Months.COUNT; month++) {
          double m3 = tank.effluent().volumeM3().get(month);
          out += m3 * tank.effluent().bod5MgL().get(month) / 1000;
          cod += m3 * tank.effluent().codMgL().get(month) / 1000;
        }
        assertThat(out).as("%s, %s kg a day", feed, freshKg).isLessThan(in).isLessThan(cod);
      }
    }
  }

  private static DigesterEstimate tank(String feed, double freshKg) {
    String plan =
        String.format(
            Locale.ROOT,
            "{'site':{'climate':{'id':'burlington'}},'people':{'count':4},"
                + "'feeds':[{'feed':'%s','freshKgPerDay':%s}],'tank':{'liquidVolumeM3':5}}",
            feed,
            freshKg);
    PlanDocument document =
        PlanDocument.read(plan.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    PlanEstimate estimate =
        Marshlight.estimate(
                new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()))
            .estimate();
    return estimate.digester();
  }
}
