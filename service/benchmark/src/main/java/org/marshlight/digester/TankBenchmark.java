package org.marshlight.digester;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.marshlight.climate.ClimateModel;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SiteClimate;
import org.marshlight.climate.SiteDesign;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.LoadModel;
import org.marshlight.feed.Waste;
import org.marshlight.json.PlanDocument;
import org.marshlight.loop.Plan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One tank's weather, warmth and matter, apart; run from the root of the repository. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class TankBenchmark {

  /** What lies over the lid. */
  @Param({"GLAZED", "EARTH"})
  public CoverKind kind;

  private final CoefficientSet set = CoefficientBook.standard().central();
  private SiteClimate climate;
  private DigesterModel.Inputs inputs;
  private TankYear year;
  private Digestion twelveWastes;

  /** Reads the plan of the contract. */
  @Setup
  public void prepare() throws IOException {
    Plan plan =
        PlanDocument.read(
                Files.readAllBytes(Path.of("sample-requests/loop-hill-smallholding.json")))
            .plan();
    Defaults defaults = new Defaults(set);
    SiteDesign site = defaults.fill(plan.site(), "/site");
    climate = ClimateModel.prepare(site, defaults, set, new ArrayList<>());
    CoverDesign cover =
        kind == CoverKind.GLAZED
            ? plan.cover()
            : new CoverDesign(CoverKind.EARTH, null, null, null, null, null, null, null);
    int people = plan.people().count();
    inputs =
        new DigesterModel.Inputs(
            ClimateYear.of(climate),
            defaults.fill(plan.tank(), "/tank"),
            defaults.fill(cover, "/cover"),
            null,
            LoadModel.toTank(
                defaults.fill(plan.people(), "/people"),
                plan.feeds() == null ? List.of() : plan.feeds(),
                set),
            people,
            people * (double) Months.DAYS_PER_YEAR,
            false,
            "bed-1",
            "hauled-away");
    year = TankYear.of(inputs, set);
    List<Waste> wastes = new ArrayList<>();
    while (wastes.size() < 12) {
      wastes.addAll(inputs.wastes());
    }
    twelveWastes =
        new Digestion(
            wastes.subList(0, 12),
            inputs.tank().liquidVolumeM3(),
            inputs.tank().compartments(),
            year.warmth().dailyLiquorC,
            3,
            8,
            year.pressureKPa(),
            set.bind(DigestionCoefficients.class));
  }

  /** Monthly normals to an hourly year. */
  @Benchmark
  public ClimateYear climateYear() {
    return ClimateYear.of(climate);
  }

  /** The hourly heat year to its periodic state, weather prepared. */
  @Benchmark
  public Object heatYear() {
    return year.heat().periodicYear();
  }

  /** The daily years of matter to their periodic state, warmth known. */
  @Benchmark
  public Object matterYears() {
    return year.digestion(inputs, set).periodic();
  }

  /** A year of days of matter from twelve wastes, with what hangs on each day's warmth. */
  @Benchmark
  public double[] matterYearOfTwelveWastes() {
    return twelveWastes.startUp(year.warmth().dailyLiquorC, 0);
  }

  /** Warmth and matter with all that is made ready for them. */
  @Benchmark
  public Object tankYear() {
    return TankYear.of(inputs, set);
  }
}
