package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.feed.Waste;

/** Tanks for tests, of invented households at the stations of the catalogue. */
final class TankFixture {

  static final CoefficientSet CENTRAL = CoefficientBook.standard().central();

  private TankFixture() {}

  static ClimateYear year(String climate) {
    Defaults defaults = new Defaults(CENTRAL);
    SiteDesign site =
        defaults.fill(
            new SiteDesign(
                new ClimateChoice(climate, null), null, null, null, null, null, null, null),
            "/site");
    return ClimateYear.of(ClimateModel.prepare(site, defaults, CENTRAL, new ArrayList<>()));
  }

  static TankDesign tank(double volumeM3, double intervalYears) {
    return new Defaults(CENTRAL)
        .fill(
            new TankDesign(
                null,
                volumeM3,
                null,
                null,
                null,
                null,
                null,
                null,
                intervalYears,
                null,
                null,
                null,
                null),
            "/tank");
  }

  static CoverDesign earth() {
    return new Defaults(CENTRAL)
        .fill(new CoverDesign(CoverKind.EARTH, null, null, null, null, null, null, null), "/cover");
  }

  static CoverDesign glass(double apertureM2, int layers, double nightM2KW) {
    return new Defaults(CENTRAL)
        .fill(
            new CoverDesign(
                CoverKind.GLAZED, apertureM2, null, null, layers, null, null, nightM2KW),
            "/cover");
  }

  static PeopleDesign people(int count) {
    return new Defaults(CENTRAL).fill(new PeopleDesign(count, null, null), "/people");
  }

  static List<Waste> wastes(int people, FeedDesign... feeds) {
    return LoadModel.toTank(people(people), List.of(feeds), CENTRAL);
  }

  static DigesterOutcome run(
      ClimateYear year, TankDesign tank, CoverDesign cover, int people, List<Waste> wastes) {
    return run(year, tank, cover, null, people, wastes);
  }

  static DigesterOutcome run(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      GasDesign gas,
      int people,
      List<Waste> wastes) {
    return DigesterModel.run(
        new DigesterModel.Inputs(
            year,
            tank,
            cover,
            gas,
            wastes,
            people,
            people * (double) Months.DAYS_PER_YEAR,
            false,
            "bed-1",
            "hauled-away"),
        CENTRAL);
  }
}
