package org.marshlight.benchmark;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.marshlight.loop.Plan;
import org.marshlight.study.Studied;
import org.marshlight.study.UncertaintyRequest;
import org.marshlight.study.UncertaintyStudy;
import org.marshlight.study.Workbench;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A thousand uncertainty draws of the bare chain, on one thread and on two. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class UncertaintyBenchmark {

  private static final int DRAWS = 1000;

  @Param({"1", "2"})
  public int threads;

  private final Plan plan = SamplePlan.read();
  private ExecutorService pool;

  @Setup
  public void open() {
    pool = Executors.newFixedThreadPool(threads);
  }

  @TearDown
  public void close() {
    pool.shutdownNow();
  }

  @Benchmark
  public Studied<UncertaintyStudy> thousandDraws() {
    return new UncertaintyRequest(plan, DRAWS, null, null, null, null, null)
        .prepare()
        .run(new Workbench(pool, threads, Workbench.Watcher.NONE));
  }
}
