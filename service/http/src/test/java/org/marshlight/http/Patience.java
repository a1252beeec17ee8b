package org.marshlight.http;

import java.time.Duration;
import java.util.concurrent.Callable;
import org.awaitility.Awaitility;

/**
 * How long a test waits for something that must come. The limit only ends tests that hang, so it is
 * far beyond what a busy machine takes.
 */
public final class Patience {

  /** The limit of every wait. */
  public static final Duration LONGEST = Duration.ofMinutes(15);

  private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);

  private Patience() {}

  /** Waits until a condition is true. */
  public static void until(Callable<Boolean> condition) {
    Awaitility.await().pollInterval(BETWEEN_LOOKS).atMost(LONGEST).until(condition);
  }
}
