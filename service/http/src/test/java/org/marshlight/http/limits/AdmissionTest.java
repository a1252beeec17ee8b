package org.marshlight.http.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.marshlight.http.Patience;
import org.marshlight.http.problems.Refusal;

/** Only so much runs at a time, and nobody waits for ever. */
class AdmissionTest {

  private static final int RUNNING = 2 * Runtime.getRuntime().availableProcessors();

  @Test
  void noMoreRunsAtATimeThanIsAllowed() {
    Admission admission = new Admission(64, Patience.LONGEST);
    AtomicInteger running = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    ExecutorService guests = Executors.newFixedThreadPool(4 * RUNNING);
    for (int i = 0; i < 4 * RUNNING; i++) {
      guests.execute(
          () ->
              admission.admit(
                  () -> {
                    most.accumulateAndGet(running.incrementAndGet(), Math::max);
                    pause();
                    return running.decrementAndGet();
                  }));
    }
    guests.shutdown();
    Patience.until(guests::isTerminated);
    assertThat(most.get()).isBetween(1, RUNNING);
    assertThat(admission.free()).isEqualTo(RUNNING + 64);
  }

  @Test
  void whoeverWaitsTooLongIsRefused() {
    Admission admission = new Admission(1, Duration.ofMillis(20));
    CountDownLatch leave = new CountDownLatch(1);
    ExecutorService guests = Executors.newFixedThreadPool(RUNNING);
    for (int i = 0; i < RUNNING; i++) {
      guests.execute(() -> admission.admit(() -> await(leave)));
    }
    Patience.until(() -> admission.free() == 1);
    pause();
    assertThatThrownBy(() -> admission.admit(() -> 1)).isInstanceOf(Refusal.class);
    leave.countDown();
    guests.shutdown();
    Patience.until(guests::isTerminated);
    assertThat(admission.admit(() -> 1)).isEqualTo(1);
  }

  @Test
  void aFailureGivesItsPlaceBack() {
    Admission admission = new Admission(1, Duration.ofMillis(20));
    int places = admission.free();
    assertThatThrownBy(
            () ->
                admission.admit(
                    () -> {
                      throw new IllegalStateException();
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(admission.free()).isEqualTo(places);
  }

  private static boolean await(CountDownLatch leave) {
    try {
      leave.await();
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(10);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
