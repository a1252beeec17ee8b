package org.marshlight.http.limits;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.marshlight.http.problems.Refusal;

/**
 * Lets only so much be computed at a time. A few more may wait a bounded while; the rest are
 * refused at once and told to come back, which is better than answering everyone too late.
 */
@ApplicationScoped
public class Admission {

  private static final int RUNNING_PER_CORE = 2;

  private final Semaphore running;
  private final Semaphore places;
  private final Duration longestWait;

  /**
   * @param waiting how many may wait
   * @param longestWait how long each may wait
   */
  public Admission(
      @ConfigProperty(name = "marshlight.admission.waiting") int waiting,
      @ConfigProperty(name = "marshlight.admission.longest-wait") Duration longestWait) {
    int most = RUNNING_PER_CORE * Runtime.getRuntime().availableProcessors();
    this.running = new Semaphore(most, true);
    this.places = new Semaphore(most + waiting);
    this.longestWait = longestWait;
  }

  /** How much more would be let in just now. */
  public int free() {
    return places.availablePermits();
  }

  /**
   * Does the work when its turn comes.
   *
   * @throws Refusal if there is no place left or the wait is too long
   */
  public <T> T admit(Supplier<T> work) {
    if (!places.tryAcquire()) {
      throw Refusal.overloaded();
    }
    try {
      return whenItsTurnComes(work);
    } finally {
      places.release();
    }
  }

  private <T> T whenItsTurnComes(Supplier<T> work) {
    if (!turnComes()) {
      throw Refusal.overloaded();
    }
    try {
      return work.get();
    } finally {
      running.release();
    }
  }

  private boolean turnComes() {
    try {
      return running.tryAcquire(longestWait.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
