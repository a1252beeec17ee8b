package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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
