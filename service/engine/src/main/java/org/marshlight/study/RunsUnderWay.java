package org.marshlight.study;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * Blocks of runs that threads are at, so that whoever gives a study up can wait until the last of
 * them has ended. A block that is cancelled cannot be waited for by itself.
 */
final class RunsUnderWay {

  private int blocks;
  private boolean over;

  /**
   * Works a block.
   *
   * @throws StudyStopped if the study is over already
   */
  <T> List<T> during(Callable<List<T>> block) throws Exception {
    begin();
    try {
      return block.call();
    } finally {
      end();
    }
  }

  /** Lets no further block begin and waits until those under way have ended. */
  synchronized void awaitEnd() {
    over = true;
    boolean interrupted = false;
    while (blocks > 0) {
      try {
        wait();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void begin() {
    if (over) {
      throw new StudyStopped();
    }
    blocks++;
  }

  private synchronized void end() {
    blocks--;
    notifyAll();
  }
}
