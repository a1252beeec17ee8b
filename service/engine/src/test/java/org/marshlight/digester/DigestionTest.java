package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Catalogues;
import org.marshlight.feed.Account;
import org.marshlight.feed.Digestibility;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;

/** What must hold of a tank's matter whatever is fed to it. */
class DigestionTest {

  private static final long SEED = 20240611;

  @Test
  void moreFeedAtHeldRetentionGivesNoLessMethane() {
    // temperature and the greatest feed that keeps loading and sludge within their limits there
    double[][] limits = {{6, 1.5}, {12, 3}, {20, 6}, {30, 8}, {40, 8}};
    for (double[] limit : limits) {
      double last = 0;
      for (double freshKg = 0.3; freshKg < limit[1]; freshKg *= 1.3) {
        double methane = methane(limit[0], feed("kitchen-scraps", freshKg, 400));
        assertThat(methane).as("%s Cel, %s kg/d", limit[0], freshKg).isGreaterThan(last - 1e-9);
        last = methane;
      }
    }
  }

  @Test
  void warmthUpToFortyGivesNoLessMethane() {
    for (String feed : List.of("kitchen-scraps", "cattle-manure", "garden-grass")) {
      double last = -1;
      for (double temperature = 0; temperature <= 40; temperature += 1) {
        double methane = methane(temperature, feed(feed, 3, 300));
        assertThat(methane).as("%s at %s Cel", feed, temperature).isGreaterThan(last - 1e-9);
        last = methane;
      }
    }
  }

  @Test
  void coldTanksGiveNoMethaneAndKeepTheirSolids() {
    assertThat(methane(2, feed("kitchen-scraps", 2, 300))).isZero();
  }

  @Test
  void methaneNeverPassesItsCeilingAndTheBooksClose() {
    Random random = new Random(SEED);
    List<String> feeds = List.copyOf(Catalogues.standard().ids("feeds"));
    for (int run = 0; run < 25; run++) {
      int people = random.nextInt(6);
      FeedDesign feed =
          new FeedDesign(
              feeds.get(random.nextInt(feeds.size())),
              0.2 + 8 * random.nextDouble(),
              random.nextBoolean() ? null : List.of(4, 5, 6, 7),
              null);
      TankDesign tank = TankFixture.tank(0.5 + 9 * random.nextDouble(), 1 + random.nextInt(12));
      DigesterOutcome outcome =
          TankFixture.run(
              TankFixture.year("des-moines"),
              tank,
              random.nextBoolean()
                  ? TankFixture.earth()
                  : TankFixture.glass(4, 1 + random.nextInt(2), random.nextDouble()),
              people,
              TankFixture.wastes(people, feed));
      String plan =
          "seed " + SEED + ", run " + run + ": " + people + " people, " + feed + ", " + tank;
      DigesterEstimate.Annual annual = outcome.estimate().annual();
      assertThat(annual.methaneProducedNm3())
          .as(plan)
          .isLessThanOrEqualTo(annual.methaneCeilingNm3() * (1 + 1e-9));
      outcome.accounts().forEach(account -> assertCloses(account, plan));
    }
  }

  @Test
  void theLongestWorkableIntervalIsToldAndWorks() {
    DigestionYear tooLong = period(12);
    double workableYears = tooLong.workableDays / Months.DAYS_PER_YEAR;

    assertThat(tooLong.filledDays).isPositive();
    assertThat(workableYears).isBetween(1.0, 12.0);
    assertThat(period((int) workableYears).filledDays).isZero();
    assertThat(period((int) workableYears + 2).filledDays).isPositive();
  }

  @Test
  void waterPumpedWithSludgeTakesWhatIsDissolvedInIt() {
    Matter pumped = period(3).pumpedSludge;

    assertThat(pumped.potassiumKg()).isPositive();
    assertThat(pumped.ammoniumNitrogenKg()).isPositive();
  }

  /** Thirteen years of water in the tank: what is dissolved must be at its limit all the same. */
  @Test
  void whatHardlyPassesIsInItsSteadyStateToo() {
    Waste waste = feed("cattle-manure", 0.4, 1);
    Matter kept = periodic(List.of(waste), 5, 17, 1).kept;

    Matter fed = waste.annual();
    assertThat(Math.abs(kept.nitrogenKg())).isLessThan(1e-4 * fed.nitrogenKg());
    assertThat(Math.abs(kept.phosphorusKg())).isLessThan(1e-4 * fed.phosphorusKg());
    assertThat(Math.abs(kept.potassiumKg())).isLessThan(1e-4 * fed.potassiumKg());
    assertThat(Math.abs(kept.codKg())).isLessThan(1e-4 * fed.codKg());
  }

  private static DigestionYear period(int years) {
    return periodic(TankFixture.wastes(4), 4, 17, years);
  }

  private static DigestionYear periodic(
      List<Waste> wastes, double volumeM3, double liquorC, int years) {
    double[] liquor = new double[Months.DAYS_PER_YEAR];
    Arrays.fill(liquor, liquorC);
    return new Digestion(
            wastes,
            volumeM3,
            2,
            liquor,
            years,
            8,
            101.325,
            TankFixture.CENTRAL.bind(DigestionCoefficients.class))
        .periodic();
  }

  /** Where nothing settles and nothing is hydrolysed, the oxygen demand passes unchanged. */
  @Test
  void withoutHydrolysisTheOxygenDemandPassesUnchanged() {
    for (String id : Catalogues.standard().ids("feeds")) {
      for (double degradable : new double[] {0, 0.1, 0.5, 1}) {
        Waste fed = feed(id, 3, 300);
        double asItComes = fed.digestibility().bod5PerCod();
        Waste passing =
            new Waste(
                id, "feeds", false, fed.perDay(), new Digestibility(degradable, 0, 0, asItComes));
        DigestionYear year = periodic(List.of(passing), 5, 15, 1);
        assertThat(Months.sum(year.effluentBod5))
            .as("%s, degradable share %s", id, degradable)
            .isCloseTo(fed.annual().codKg() * asItComes, withinPercentage(1e-4));
      }
    }
  }

  @Test
  void noOxygenDemandLeavesThatNeitherEnteredNorWasHydrolysed() {
    double ofAcid = TankFixture.CENTRAL.bind(DigestionCoefficients.class).bod5OfAcid();
    for (String id : Catalogues.standard().ids("feeds")) {
      for (double temperature : new double[] {5, 15, 30}) {
        Waste fed = feed(id, 8, 300);
        DigestionYear year = periodic(List.of(fed), 5, temperature, 3);
        double entered = fed.annual().codKg() * fed.digestibility().bod5PerCod();
        String plan = id + " at " + temperature + " Cel";
        assertThat(Months.sum(year.effluentBod5) - ofAcid * Months.sum(year.effluentAcidCod))
            .as(plan)
            .isBetween(0.0, entered);
        for (int month = 0; month < Months.COUNT; month++) {
          assertThat(year.effluentBod5[month])
              .as(plan)
              .isLessThanOrEqualTo(
                  year.effluentDegradableCod[month]
                      + year.effluentInertCod[month]
                      + year.effluentAcidCod[month]);
        }
      }
    }
  }

  private static void assertCloses(Account account, String plan) {
    Matter in = Matter.sum(account.received().stream().map(Account.Entry::matter).toList());
    Matter out = Matter.sum(account.gave().stream().map(Account.Entry::matter).toList());
    Matter left = in.minus(out).minus(account.kept());
    double[][] pairs = {
      {left.waterKg(), in.waterKg()},
      {left.codKg(), in.codKg()},
      {left.carbonKg(), in.carbonKg()},
      {left.nitrogenKg(), in.nitrogenKg()},
      {left.phosphorusKg(), in.phosphorusKg()},
      {left.potassiumKg(), in.potassiumKg()}
    };
    for (double[] pair : pairs) {
      assertThat(Math.abs(pair[0])).as(plan).isLessThanOrEqualTo(1e-9 * Math.max(pair[1], 1e-9));
    }
  }

  private static Waste feed(String id, double freshKgDay, double waterKgDay) {
    FeedAnalysis analysis = TankFixture.CENTRAL.bind(FeedAnalysis.class, id);
    Matter day = analysis.matter(freshKgDay);
    Matter diluted = day.plus(Matter.water(waterKgDay - day.waterKg()));
    return new Waste(
        id, "feeds", false, Collections.nCopies(Months.COUNT, diluted), analysis.digestibility());
  }

  private static double methane(double temperatureC, Waste waste) {
    DigestionYear year = periodic(List.of(waste), 5, temperatureC, 3);
    return Stoichiometry.methaneOfCodNm3(Months.sum(year.methaneCodOther));
  }
}
