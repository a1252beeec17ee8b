package org.marshlight.http.studies;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.marshlight.http.problems.Refusal;

/**
 * Where studies run: on as many threads as there are cores, apart from those that answer estimates,
 * and only so many studies at a time. A study whose client is gone is not wanted any more.
 */
@ApplicationScoped
public class StudyFloor {

  private final int threads = Runtime.getRuntime().availableProcessors();
  private final ThreadPoolExecutor pool =
      new ThreadPoolExecutor(
          threads, threads, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), StudyFloor::thread);
  private final Semaphore places;

  /**
   * @param atATime how many studies may run at a time
   */
  public StudyFloor(@ConfigProperty(name = "marshlight.studies.at-a-time") int atATime) {
    this.places = new Semaphore(atATime);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "study");
    thread.setDaemon(true);
    return thread;
  }

  /** How many more studies would be let in just now. */
  public int free() {
    return places.availablePermits();
  }

  /** Whether any run of any study is being done. */
  public boolean running() {
    return pool.getActiveCount() > 0 || !pool.getQueue().isEmpty();
  }

  /**
   * A place for the study of a request, free again as soon as the response is over and nothing is
   * worked for it any more: a client that goes away makes no room for another study while its own
   * is still being stopped.
   *
   * @throws Refusal if there is none
   */
  Place enter(RoutingContext context) {
    Place place = enter();
    context.addEndHandler(ended -> place.leave());
    return place;
  }

  /**
   * A place that its holder leaves.
   *
   * @throws Refusal if there is none
   */
  public Place enter() {
    if (!places.tryAcquire()) {
      throw Refusal.overloaded();
    }
    return new Place();
  }

  @PreDestroy
  void close() {
    pool.shutdownNow();
  }

  /** One study's place. */
  public final class Place {

    private volatile boolean left;
    private boolean worked;
    private boolean free;

    ExecutorService pool() {
      return pool;
    }

    int threads() {
      return threads;
    }

    /** Whether the client has its answer, or is gone. */
    boolean isLeft() {
      return left;
    }

    /** Works for the study that has this place, and keeps the place until that is done. */
    <T> T work(Supplier<T> work) {
      setWorked(true);
      try {
        return work.get();
      } finally {
        setWorked(false);
      }
    }

    private synchronized void setWorked(boolean now) {
      worked = now;
      freeIfOver();
    }

    /** Gives the place up as soon as nothing is worked at it. */
    public synchronized void leave() {
      left = true;
      freeIfOver();
    }

    private void freeIfOver() {
      if (left && !worked && !free) {
        free = true;
        places.release();
      }
    }
  }
}
