package org.marshlight.wetland;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Months;
import org.marshlight.contract.RecordShape;
import org.marshlight.crop.BedFixture;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.RandomBeds;
import org.marshlight.crop.ReadyRequest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

/** Books of random legal beds close, and no figure is missing or impossible. */
class BedsCloseTest {

  private static final long SEED = 20260501;
  private static final int PLANS = 200;

  private static final Map<String, ToDoubleFunction<Matter>> BALANCED = balanced();

  private static Map<String, ToDoubleFunction<Matter>> balanced() {
    Map<String, ToDoubleFunction<Matter>> quantities = new LinkedHashMap<>();
    quantities.put("water", Matter::waterKg);
    quantities.put("COD", Matter::codKg);
    quantities.put("carbon", Matter::carbonKg);
    quantities.put("nitrogen", Matter::nitrogenKg);
    quantities.put("phosphorus", Matter::phosphorusKg);
    quantities.put("potassium", Matter::potassiumKg);
    return quantities;
  }

  @Test
  void everyBedClosesInEveryQuantity() {
    for (int plan = 0; plan < PLANS; plan++) {
      long seed = SEED + plan;
      for (Account account : run(seed).accounts()) {
        BALANCED.forEach((name, quantity) -> closes(account, name, quantity, request(seed)));
      }
    }
  }

  private static void closes(
      Account account, String name, ToDoubleFunction<Matter> quantity, Object seed) {
    double in = 0;
    double turnover = 1e-12;
    for (Account.Entry entry : account.received()) {
      double amount = quantity.applyAsDouble(entry.matter());
      in += amount;
      turnover = Math.max(turnover, Math.abs(amount));
    }
    double out = quantity.applyAsDouble(account.kept());
    for (Account.Entry entry : account.gave()) {
      out += quantity.applyAsDouble(entry.matter());
    }
    assertThat(Math.abs(in - out) / turnover)
        .as("%s of %s, %s: in %s, out %s", name, account.process(), seed, in, out)
        .isLessThan(1e-9);
  }

  /** Any coefficient may be set by a plan to anything that its row allows. */
  @Test
  void bedsCloseWhateverThePlanSetsTheCoefficientsTo() {
    for (int plan = 0; plan < PLANS; plan++) {
      long seed = SEED + 5000 + plan;
      RandomBeds random = new RandomBeds(seed);
      CoefficientSet set = random.coefficients();
      WetlandOutcome<CropGrowth> outcome = WetlandModel.run(random.inputs(set), set);
      for (Account account : outcome.accounts()) {
        BALANCED.forEach((name, quantity) -> closes(account, name, quantity, request(seed)));
      }
      withinBounds(outcome.estimate(), request(seed));
    }
  }

  @Test
  void whatOneBedGivesTheNextReceives() {
    for (int plan = 0; plan < PLANS; plan++) {
      List<Account> accounts = run(SEED + plan).accounts();
      for (int i = 0; i + 1 < accounts.size(); i++) {
        Account from = accounts.get(i);
        Account to = accounts.get(i + 1);
        assertThat(entry(from.gave(), to.process()))
            .as("%s", request(SEED + plan))
            .isEqualTo(entry(to.received(), from.process()));
      }
    }
  }

  private static Matter entry(List<Account.Entry> entries, String party) {
    return entries.stream().filter(e -> e.party().equals(party)).findFirst().orElseThrow().matter();
  }

  @Test
  void noBedCreatesWhatItDoesNotReceive() {
    for (int plan = 0; plan < PLANS; plan++) {
      Object seed = request(SEED + plan);
      WetlandOutcome<CropGrowth> outcome = run(SEED + plan);
      for (Account account : outcome.accounts()) {
        for (Account.Entry entry : account.gave()) {
          notNegative(entry.matter(), account.process() + " to " + entry.party(), seed);
        }
      }
      for (WetlandEstimate.Bed bed : outcome.estimate().beds()) {
        double slack = 1e-9 * (1 + bed.nitrogen().inflowKg());
        assertThat(bed.nitrogen().uptakeKg())
            .as("%s", seed)
            .isLessThanOrEqualTo(bed.nitrogen().inflowKg() + slack);
        assertThat(bed.phosphorus().uptakeKg())
            .as("%s", seed)
            .isLessThanOrEqualTo(bed.phosphorus().inflowKg() + slack);
        assertThat(bed.potassium().uptakeKg())
            .as("%s", seed)
            .isLessThanOrEqualTo(bed.potassium().inflowKg() + slack);
      }
    }
  }

  private static void notNegative(Matter matter, String flow, Object seed) {
    BALANCED.forEach(
        (name, quantity) ->
            assertThat(quantity.applyAsDouble(matter))
                .as("%s of %s, %s", name, flow, seed)
                .isGreaterThanOrEqualTo(-1e-9 * (1 + Math.abs(matter.waterKg()))));
  }

  @Test
  void everyFigureIsFiniteAndWithinItsBounds() {
    for (int plan = 0; plan < PLANS; plan++) {
      Object seed = request(SEED + plan);
      WetlandOutcome<CropGrowth> outcome = run(SEED + plan);
      withinBounds(outcome.estimate(), seed);
      for (int month = 0; month < Months.COUNT; month++) {
        boolean flows = outcome.outflow().volumeM3(month) > 0;
        assertThat(outcome.estimate().monthly().effluentBod5MgL().get(month) != null)
            .as("%s month %s", seed, month)
            .isEqualTo(flows);
      }
    }
  }

  private static void withinBounds(Record record, Object seed) {
    withinBounds(record, "", seed);
  }

  private static void withinBounds(Record record, String where, Object seed) {
    for (RecordShape.Field field : RecordShape.of(record.getClass()).fields()) {
      Object value = field.of(record);
      String at = where + " " + field.name();
      if (value instanceof Record nested) {
        withinBounds(nested, at, seed);
      } else if (value instanceof List<?> list) {
        list.forEach(element -> elementWithinBounds(element, field, at, seed));
      } else {
        elementWithinBounds(value, field, at, seed);
      }
    }
  }

  private static void elementWithinBounds(
      Object value, RecordShape.Field field, String at, Object seed) {
    if (value instanceof Record nested) {
      withinBounds(nested, at, seed);
    } else if (value instanceof Number number) {
      assertThat(number.doubleValue())
          .as("%s of %s", at, seed)
          .isBetween(
              field.quantity().orElseThrow().min() - 1e-9, field.quantity().orElseThrow().max());
    }
  }

  @Test
  void theWorkingOfAnyLegalPlanStaysWithinTheRangesOfItsFormulas() {
    for (int plan = 0; plan < PLANS; plan++) {
      WetlandModel.Inputs<CropGrowth> inputs = new RandomBeds(SEED + plan).inputs();
      assertThat(WetlandModel.working(inputs, BedFixture.CENTRAL))
          .as("%s", request(SEED + plan))
          .isNotEmpty();
    }
  }

  @Test
  void aValveGivesTheSoilWhatItKeepsFromTheBeds() {
    DiversionDesign valve = new DiversionDesign(List.of(1, 2), null, null, null);
    WetlandOutcome<CropGrowth> outcome =
        WetlandModel.run(
            BedFixture.inputs(
                BedFixture.hill(),
                BedFixture.septic(0.6),
                valve,
                BedFixture.gravel(30, "common-reed", 0.33)),
            BedFixture.CENTRAL);
    assertThat(outcome.estimate().diversion().months()).containsExactly(1, 2);
    assertThat(outcome.estimate().diversion().waterM3()).isEqualTo(0.6 * 59, within());
    assertThat(outcome.accounts().get(0).process()).isEqualTo(WetlandModel.inlet(valve));
    assertThat(entry(outcome.accounts().get(0).gave(), Party.SOIL).nitrogenKg())
        .isEqualTo(0.070 * 0.6 * 59, within());
    assertThat(outcome.estimate().monthly().inflowM3().get(0)).isZero();
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  /** A random plan as it can be sent to the service, written only where a test fails. */
  private static Object request(long seed) {
    return new Object() {
      @Override
      public String toString() {
        return ReadyRequest.of(seed, new RandomBeds(seed).inputs());
      }
    };
  }

  private static WetlandOutcome<CropGrowth> run(long seed) {
    return WetlandModel.run(new RandomBeds(seed).inputs(), BedFixture.CENTRAL);
  }
}
