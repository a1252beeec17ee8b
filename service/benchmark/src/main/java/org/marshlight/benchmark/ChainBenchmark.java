package org.marshlight.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.Decision;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.VerdictModel;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One pass of the chain and its parts, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ChainBenchmark {

  private final Plan plan = SamplePlan.read();
  private final CoefficientSet set = LoopModel.coefficients(plan);
  private final PreparedSite site = PreparedSite.of(plan, set);
  private final LoopRun run = LoopModel.run(plan, Stage.LOOP, site, set);

  @Benchmark
  public PreparedSite climate() {
    return PreparedSite.of(plan, set);
  }

  @Benchmark
  public LoopRun tank() {
    return LoopModel.run(plan, Stage.DIGESTER, site, set);
  }

  @Benchmark
  public LoopRun chain() {
    return LoopModel.run(plan, Stage.LOOP, site, set);
  }

  /** The verdicts alone, the chain of the plan itself given. */
  @Benchmark
  public List<Verdict> verdicts() {
    return VerdictModel.verdicts(plan, run, site, set);
  }

  /** All that is decided, the chain of the plan itself given. */
  @Benchmark
  public Decision decision() {
    return VerdictModel.decide(plan, run, site, set, new TankYears());
  }

  @Benchmark
  public Answer<PlanEstimate> estimateWithVerdicts() {
    return Marshlight.estimate(new Marshlight.Request(plan, Stage.LOOP, false, null));
  }
}
