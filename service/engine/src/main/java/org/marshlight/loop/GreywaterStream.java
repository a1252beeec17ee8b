package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.digester.DigestionCoefficients;
import org.marshlight.digester.HeatCoefficients;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.Matter;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.feed.PersonalStream;
import org.marshlight.feed.WaterStream;

/** Greywater that takes its own way where only toilet water enters the tank. */
final class GreywaterStream {

  private GreywaterStream() {}

  static WaterStream of(PeopleDesign people, ClimateYear year, CoefficientSet set) {
    List<Matter> perDay = LoadModel.greywaterBesideTank(people, set);
    PersonalStream analysis = set.bind(PersonalStream.class, "greywater");
    DigestionCoefficients digestion = set.bind(DigestionCoefficients.class);
    List<Matter> monthly = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      Matter matter = perDay.get(month).times(Months.days(month));
      monthly.add(matter);
      bod5[month] = matter.codKg() * analysis.bod5PerCod();
      solids[month] = matter.volatileSolidsKg() * digestion.suspendedShare();
    }
    return new WaterStream(
        List.copyOf(monthly),
        bod5,
        solids,
        Months.constant(digestion.effluentColiforms()),
        temperatureC(year.site(), set),
        true);
  }

  private static double[] temperatureC(SiteClimate site, CoefficientSet set) {
    HeatCoefficients heat = set.bind(HeatCoefficients.class);
    double[] temperature = site.ground().monthlyC(heat.mainsDepth(), site.dampingDepthM());
    for (int month = 0; month < Months.COUNT; month++) {
      temperature[month] = Math.max(1, temperature[month]) + heat.inflowAboveMains();
    }
    return temperature;
  }
}
