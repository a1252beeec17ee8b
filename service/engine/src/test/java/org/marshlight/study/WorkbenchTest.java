package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class WorkbenchTest {

  private final ExecutorService pool = Executors.newFixedThreadPool(2);

  @AfterEach
  void close() {
    pool.shutdownNow();
  }

  @Test
  void resultsStandInTheOrderOfTheRuns() {
    List<Integer> results = new Workbench(pool, 2, Workbench.Watcher.NONE).each(101, i -> i);
    assertThat(results).isEqualTo(IntStream.range(0, 101).boxed().toList());
  }

  @Test
  void progressIsToldAndEndsWithTheLastRun() {
    List<Integer> heard = new ArrayList<>();
    new Workbench(pool, 2, (done, of) -> heard.add(done)).each(20, i -> i);
    assertThat(heard).isSorted().endsWith(20);
  }

  @Test
  void aStudyThatNobodyWantsStops() {
    AtomicInteger runs = new AtomicInteger();
    Workbench.Watcher gone =
        new Workbench.Watcher() {
          @Override
          public void done(int done, int of) {}

          @Override
          public boolean unwanted() {
            return runs.get() >= 10;
          }
        };
    assertThatThrownBy(() -> new Workbench(pool, 2, gone).each(10_000, i -> runs.incrementAndGet()))
        .isInstanceOf(StudyStopped.class);
    assertThat(runs.get()).isLessThan(100);
  }

  @Test
  void aWatcherHearsOfARunThatTakesLong() {
    CountDownLatch heard = new CountDownLatch(3);
    Workbench.Watcher watcher =
        new Workbench.Watcher() {
          @Override
          public void done(int done, int of) {}

          @Override
          public void waiting(int done, int of) {
            assertThat(of).isEqualTo(1);
            heard.countDown();
          }
        };
    List<Boolean> results =
        new Workbench(pool, 2, watcher, Duration.ofMillis(5)).each(1, i -> awaited(heard));
    assertThat(results).containsExactly(true);
  }

  @Test
  void noRunIsUnderWayOnceAStudyHasStopped() {
    AtomicInteger underWay = new AtomicInteger();
    AtomicInteger runs = new AtomicInteger();
    CountDownLatch both = new CountDownLatch(2);
    CountDownLatch never = new CountDownLatch(1);
    Workbench bench = new Workbench(pool, 2, Workbench.Watcher.NONE);
    assertThatThrownBy(
            () ->
                bench.each(
                    100,
                    1,
                    i -> {
                      underWay.incrementAndGet();
                      runs.incrementAndGet();
                      both.countDown();
                      awaited(both);
                      if (i == 0) {
                        underWay.decrementAndGet();
                        throw new ArithmeticException("the first");
                      }
                      await(never, 50);
                      return underWay.decrementAndGet();
                    }))
        .isInstanceOf(ArithmeticException.class);
    int ended = runs.get();
    assertThat(underWay.get()).isZero();
    assertThat(ended).isLessThan(100);
  }

  private static boolean awaited(CountDownLatch latch) {
    return await(latch, 60_000);
  }

  private static boolean await(CountDownLatch latch, long longestMs) {
    try {
      return latch.await(longestMs, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Test
  void whatGoesWrongInARunIsThrownAsItIs() {
    Workbench bench = new Workbench(pool, 2, Workbench.Watcher.NONE);
    assertThatThrownBy(
            () ->
                bench.each(
                    50,
                    i -> {
                      if (i == 30) {
                        throw new ArithmeticException("thirty");
                      }
                      return i;
                    }))
        .isInstanceOf(ArithmeticException.class);
  }
}
