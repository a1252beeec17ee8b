package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SymmetricYears;
import org.marshlight.contract.Months;

/** What must hold of a tank's warmth. */
class TankHeatTest {

  @ParameterizedTest
  @ValueSource(strings = {"managua", "minneapolis-saint-paul", "christchurch"})
  void heatFlowsSumToTheChangeOfStoredHeat(String climate) {
    for (CoverDesign cover :
        List.of(
            TankFixture.earth(), bare(), TankFixture.glass(5, 1, 0), TankFixture.glass(5, 2, 1))) {
      DigesterEstimate estimate = run(climate, cover);
      DigesterEstimate.HeatFlows flows = estimate.heatFlowsKWh();
      for (int month = 0; month < Months.COUNT; month++) {
        double sum = 0;
        double gross = 0;
        for (List<Double> flow :
            List.of(
                flows.absorbedSun(),
                flows.topToAir(),
                flows.topToSky(),
                flows.enclosure(),
                flows.coverSoil(),
                flows.ground(),
                flows.inflow())) {
          sum += flow.get(month);
          gross += Math.abs(flow.get(month));
        }
        assertThat(sum).isCloseTo(estimate.storedHeatChangeKWh().get(month), within(1e-9 * gross));
      }
    }
  }

  /** The hottest stations of the catalogue, with glass of every slope up to a hundred lids. */
  @ParameterizedTest
  @ValueSource(strings = {"el-paso", "las-vegas-mccarran"})
  void nothingGetsHotterThanTheStagnationTemperatureStated(String climate) {
    ClimateYear year = TankFixture.year(climate);
    for (double apertureM2 : new double[] {1, 4, 8, 30, 400}) {
      for (double tiltDeg : new double[] {0, 50, 70, 90}) {
        for (int panes = 1; panes <= 2; panes++) {
          DigesterEstimate.Annual annual =
              under(year, sloped(TankFixture.glass(apertureM2, panes, 1), tiltDeg)).annual();
          assertThat(annual.stagnationTemperatureC())
              .as("%s m2 at %s deg, %s panes", apertureM2, tiltDeg, panes)
              .isGreaterThan(annual.highestLidTemperatureC())
              .isGreaterThan(annual.highestSurfaceTemperatureC());
        }
      }
    }
  }

  @Test
  void glassThatDoesNotFitOverTheLidCollectsNothing() {
    ClimateYear year = TankFixture.year("burlington");
    double lidM2 = 5 / 1.4;
    double room = lidM2 / Math.cos(Math.toRadians(50));
    DigesterEstimate fits = under(year, sloped(TankFixture.glass(room, 2, 1), 50));
    DigesterEstimate beyond = under(year, sloped(TankFixture.glass(30, 2, 1), 50));
    for (int month = 0; month < Months.COUNT; month++) {
      assertThat(beyond.heatFlowsKWh().absorbedSun().get(month))
          .isCloseTo(fits.heatFlowsKWh().absorbedSun().get(month), within(1e-9));
    }
    assertThat(beyond.annual().meanLiquorTemperatureC())
        .isLessThan(fits.annual().meanLiquorTemperatureC());
  }

  private static DigesterEstimate under(ClimateYear year, CoverDesign cover) {
    return TankFixture.run(year, TankFixture.tank(5, 3), cover, 4, TankFixture.wastes(4))
        .estimate();
  }

  private static CoverDesign sloped(CoverDesign glass, double tiltDeg) {
    return new CoverDesign(
        glass.kind(),
        glass.apertureM2(),
        tiltDeg,
        glass.azimuthDeg(),
        glass.layers(),
        glass.absorptance(),
        glass.enclosureResistanceM2KW(),
        glass.nightResistanceM2KW());
  }

  @Test
  void theYearEndsAsItBegan() {
    double change =
        run("burlington", TankFixture.glass(4, 1, 0.5)).storedHeatChangeKWh().stream()
            .mapToDouble(Double::doubleValue)
            .sum();
    assertThat(change).isCloseTo(0, within(1e-3));
  }

  @Test
  void glassQuiltAndASecondPaneEachWarm() {
    double earth = mean(TankFixture.earth());
    double onePane = mean(TankFixture.glass(4, 1, 0));
    double quilt = mean(TankFixture.glass(4, 1, 1.5));
    double twoPanes = mean(TankFixture.glass(4, 2, 0));
    assertThat(onePane).isGreaterThan(earth);
    assertThat(quilt).isGreaterThan(onePane);
    assertThat(twoPanes).isGreaterThan(onePane);
  }

  private static double mean(CoverDesign cover) {
    return run("seattle-tacoma", cover).annual().meanLiquorTemperatureC();
  }

  private static CoverDesign bare() {
    return new CoverDesign(CoverKind.NONE, null, null, null, null, null, null, null);
  }

  private static DigesterEstimate run(String climate, CoverDesign cover) {
    return TankFixture.run(
            TankFixture.year(climate), TankFixture.tank(4, 3), cover, 4, TankFixture.wastes(4))
        .estimate();
  }

  @Test
  void layersOfLiquorCloseToo() {
    DigesterEstimate estimate =
        TankFixture.run(
                TankFixture.year("burlington"),
                layered(TankFixture.tank(4, 3)),
                TankFixture.glass(5, 1, 0.5),
                4,
                TankFixture.wastes(4))
            .estimate();
    double in = 0;
    DigesterEstimate.HeatFlows flows = estimate.heatFlowsKWh();
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      double flow =
          flows.absorbedSun().get(month)
              + flows.topToAir().get(month)
              + flows.topToSky().get(month)
              + flows.enclosure().get(month)
              + flows.ground().get(month)
              + flows.inflow().get(month);
      sum = Math.max(sum, Math.abs(flow - estimate.storedHeatChangeKWh().get(month)));
      in += flows.absorbedSun().get(month);
    }
    assertThat(sum).isLessThan(1e-9 * in);
    double mixed =
        run("burlington", TankFixture.glass(5, 1, 0.5)).annual().meanLiquorTemperatureC();
    assertThat(estimate.annual().meanLiquorTemperatureC()).isCloseTo(mixed, within(2.0));
  }

  @Test
  void scumHoldsHeatBack() {
    TankDesign plain = TankFixture.tank(4, 3);
    TankDesign scum =
        new TankDesign(
            plain.shape(),
            plain.liquidVolumeM3(),
            plain.liquidDepthM(),
            plain.lengthM(),
            plain.burialDepthM(),
            plain.wallResistanceM2KW(),
            plain.lidResistanceM2KW(),
            plain.compartments(),
            plain.desludgingIntervalYears(),
            plain.desludgingMonth(),
            1,
            0.5,
            null);
    double without = lidToLiquor(plain);
    double with = lidToLiquor(scum);
    assertThat(with).isLessThan(without);
  }

  private static double lidToLiquor(TankDesign tank) {
    return TankFixture.run(
            TankFixture.year("el-paso"), tank, TankFixture.glass(5, 2, 1), 4, TankFixture.wastes(4))
        .estimate()
        .monthly()
        .lidToLiquorKWh()
        .stream()
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  private static TankDesign layered(TankDesign tank) {
    return new TankDesign(
        tank.shape(),
        tank.liquidVolumeM3(),
        tank.liquidDepthM(),
        tank.lengthM(),
        tank.burialDepthM(),
        tank.wallResistanceM2KW(),
        tank.lidResistanceM2KW(),
        tank.compartments(),
        tank.desludgingIntervalYears(),
        tank.desludgingMonth(),
        2,
        0.0,
        null);
  }

  @Test
  void theHemispheresAreMirrorImages() {
    HeatYear north = heat(SymmetricYears.at(47), glassFacing(180), 1);
    HeatYear south = heat(SymmetricYears.at(-47), glassFacing(0), 1);
    for (int month = 0; month < Months.COUNT; month++) {
      assertThat(south.monthlyLiquorC[month]).isCloseTo(north.monthlyLiquorC[month], within(0.01));
    }
    HeatYear east = heat(SymmetricYears.at(47), glassFacing(120), 1);
    HeatYear mirroredEast = heat(SymmetricYears.at(-47), glassFacing(60), 1);
    assertThat(mirroredEast.meanLiquorC()).isCloseTo(east.meanLiquorC(), within(0.01));
    assertThat(Math.abs(east.meanLiquorC() - north.meanLiquorC())).isGreaterThan(0.05);
  }

  @ParameterizedTest
  @ValueSource(strings = {"seattle-tacoma", "minneapolis-saint-paul", "el-paso"})
  void halvingTheStepChangesNoMonthByMuch(String climate) {
    HeatYear hourly = heat(TankFixture.year(climate), TankFixture.glass(6, 2, 1), 1);
    HeatYear half = heat(TankFixture.year(climate), TankFixture.glass(6, 2, 1), 2);
    for (int month = 0; month < Months.COUNT; month++) {
      assertThat(half.monthlyLiquorC[month])
          .as("%s, month %s", climate, month + 1)
          .isCloseTo(hourly.monthlyLiquorC[month], within(0.05));
    }
  }

  @Test
  void aColdTankWarmsToItsPeriodicYear() {
    TankDesign plain = TankFixture.tank(4, 3);
    TankDesign asked =
        new TankDesign(
            plain.shape(),
            plain.liquidVolumeM3(),
            plain.liquidDepthM(),
            plain.lengthM(),
            plain.burialDepthM(),
            plain.wallResistanceM2KW(),
            plain.lidResistanceM2KW(),
            plain.compartments(),
            plain.desludgingIntervalYears(),
            plain.desludgingMonth(),
            1,
            0.0,
            4);
    DigesterEstimate estimate =
        TankFixture.run(
                TankFixture.year("seattle-tacoma"),
                asked,
                TankFixture.glass(4, 1, 0),
                4,
                TankFixture.wastes(4))
            .estimate();
    DigesterEstimate.StartUp startUp = estimate.startUp();
    for (int told = 24; told < 36; told++) {
      int month = (3 + told) % Months.COUNT;
      assertThat(startUp.liquorTemperatureC().get(told))
          .isCloseTo(estimate.monthly().liquorTemperatureC().get(month), within(0.6));
    }
    assertThat(startUp.liquorTemperatureC().get(12))
        .isLessThan(startUp.liquorTemperatureC().get(24));
    double first = sum(startUp.methaneProducedNm3(), 0, 12);
    double third = sum(startUp.methaneProducedNm3(), 24, 36);
    assertThat(first).isLessThan(0.95 * third);
  }

  private static double sum(List<Double> values, int from, int to) {
    return values.subList(from, to).stream().mapToDouble(Double::doubleValue).sum();
  }

  @Test
  void hoursAreRunWithoutMakingObjects() {
    TankHeat tank = tankUnder(TankFixture.year("burlington"), TankFixture.glass(6, 2, 2), 1);
    tank.periodicYear();
    ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = thread.getCurrentThreadAllocatedBytes();

    tank.periodicYear();

    long bytes = thread.getCurrentThreadAllocatedBytes() - before;
    assertThat(bytes).as("bytes for some 20000 hours").isLessThan(64 * 1024L);
  }

  private static CoverDesign glassFacing(double azimuthDeg) {
    CoverDesign glass = TankFixture.glass(6, 2, 1);
    return new CoverDesign(
        glass.kind(),
        glass.apertureM2(),
        glass.tiltDeg(),
        azimuthDeg,
        glass.layers(),
        glass.absorptance(),
        glass.enclosureResistanceM2KW(),
        glass.nightResistanceM2KW());
  }

  private static HeatYear heat(ClimateYear year, CoverDesign cover, int stepsPerHour) {
    return tankUnder(year, cover, stepsPerHour).periodicYear();
  }

  private static TankHeat tankUnder(ClimateYear year, CoverDesign cover, int stepsPerHour) {
    HeatCoefficients coefficients = TankFixture.CENTRAL.bind(HeatCoefficients.class);
    TankDesign tank = TankFixture.tank(6, 3);
    TankGeometry geometry = TankGeometry.of(tank, coefficients.gasSpaceHeight());
    return new TankHeat(
        year,
        tank,
        cover.over(geometry.planAreaM2(), year.site().latitudeRad()),
        geometry,
        coefficients,
        new Inflow(Months.constant(500), Months.constant(18)),
        stepsPerHour);
  }
}
