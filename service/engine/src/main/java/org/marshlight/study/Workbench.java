package org.marshlight.study;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.IntFunction;

/**
 * Where the runs of a study are done. They are cut into blocks whatever the number of threads, and
 * results stand in the order of the runs, so that an answer does not hang on how many cores there
 * were.
 */
public final class Workbench {

  /** Runs that one thread usually does in a row. */
  private static final int BLOCK = 8;

  /** How often a watcher hears of a study that gets no further. */
  private static final Duration HEARTBEAT = Duration.ofSeconds(5);

  private final ExecutorService pool;
  private final int inFlight;
  private final Watcher watcher;
  private final Duration heartbeat;

  /**
   * A bench.
   *
   * @param pool threads that do the runs; the caller's own thread only waits
   * @param threads how many threads the pool has; a few more blocks than that are handed out at a
   *     time, so that studies that share the pool take turns
   * @param watcher hears how far the study is, on the caller's thread
   */
  public Workbench(ExecutorService pool, int threads, Watcher watcher) {
    this(pool, threads, watcher, HEARTBEAT);
  }

  /** A bench whose watcher hears in another rhythm of a study that gets no further. */
  Workbench(ExecutorService pool, int threads, Watcher watcher, Duration heartbeat) {
    this.pool = pool;
    this.heartbeat = heartbeat;
    this.inFlight = 2 * threads;
    this.watcher = watcher;
  }

  /**
   * Does runs.
   *
   * @param count how many
   * @param run the run of each number from 0; called from several threads
   * @return the results in order
   * @throws StudyStopped if nobody wants the study any more; no run of it is under way then
   */
  <T> List<T> each(int count, IntFunction<T> run) {
    return each(count, BLOCK, run);
  }

  /**
   * Does runs in blocks of another size.
   *
   * @param count how many
   * @param size runs that one thread does in a row
   * @param run the run of each number from 0; called from several threads
   */
  <T> List<T> each(int count, int size, IntFunction<T> run) {
    int blocks = (count + size - 1) / size;
    List<Future<List<T>>> handedOut = new ArrayList<>();
    RunsUnderWay underWay = new RunsUnderWay();
    List<T> results = new ArrayList<>(count);
    try {
      for (int block = 0; block < blocks; block++) {
        while (handedOut.size() < Math.min(blocks, block + inFlight)) {
          int from = handedOut.size() * size;
          int to = Math.min(count, from + size);
          handedOut.add(pool.submit(() -> underWay.during(() -> block(from, to, run))));
        }
        results.addAll(awaited(handedOut.get(block), results.size(), count));
        handedOut.set(block, null);
        watcher.done(results.size(), count);
        stopIfUnwanted();
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StudyStopped();
    } catch (ExecutionException e) {
      throw unwrapped(e);
    } finally {
      for (Future<List<T>> block : handedOut) {
        if (block != null) {
          block.cancel(false);
        }
      }
      underWay.awaitEnd();
    }
  }

  /** The results of a block; while they are waited for, the watcher hears that the study lives. */
  private <T> List<T> awaited(Future<List<T>> block, int done, int of)
      throws InterruptedException, ExecutionException {
    while (true) {
      try {
        return block.get(heartbeat.toMillis(), TimeUnit.MILLISECONDS);
      } catch (TimeoutException stillWorking) {
        watcher.waiting(done, of);
        stopIfUnwanted();
      }
    }
  }

  private <T> List<T> block(int from, int to, IntFunction<T> run) {
    List<T> results = new ArrayList<>(to - from);
    for (int i = from; i < to; i++) {
      stopIfUnwanted();
      results.add(run.apply(i));
    }
    return results;
  }

  private void stopIfUnwanted() {
    if (watcher.unwanted()) {
      throw new StudyStopped();
    }
  }

  private static RuntimeException unwrapped(ExecutionException e) {
    if (e.getCause() instanceof Error error) {
      throw error;
    }
    return e.getCause() instanceof RuntimeException cause
        ? cause
        : new IllegalStateException(e.getCause());
  }

  /** Hears how far a study is and says whether it is still wanted. */
  public interface Watcher {

    /** Watches nothing and wants every study to its end. */
    Watcher NONE = (runs, of) -> {};

    /**
     * Hears of progress, on the thread that asked for the study.
     *
     * @param runs runs done of the present part of the study
     * @param of runs that this part has
     */
    void done(int runs, int of);

    /**
     * Hears that the study is still worked at though no more runs are done, on the thread that
     * asked for it.
     *
     * @param runs runs done of the present part of the study
     * @param of runs that this part has
     */
    default void waiting(int runs, int of) {}

    /** Whether nobody waits for the study any more; asked from several threads. */
    default boolean unwanted() {
      return false;
    }
  }
}
