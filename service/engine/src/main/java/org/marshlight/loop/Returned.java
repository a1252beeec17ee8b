package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.feed.Matter;

/**
 * Streams that the loop sends back to its tank, by the process that sends them.
 *
 * @param streams one for each process and kind
 */
record Returned(List<Stream> streams) {

  static final Returned NOTHING = new Returned(List.of());

  /**
   * One returned stream.
   *
   * @param name what it is; also the feed of the catalogue whose behaviour in a tank it shares
   * @param from process that sends it
   * @param annual matter of a year
   * @param route field of the plan that sends it back
   */
  record Stream(String name, String from, Matter annual, String route) {}

  /** The streams that differ from those of an earlier pass by more than a share of themselves. */
  List<Stream> movedSince(Returned earlier, double share) {
    List<Stream> moved = new ArrayList<>();
    for (int i = 0; i < streams.size(); i++) {
      Matter before = i < earlier.streams.size() ? earlier.streams.get(i).annual() : Matter.NONE;
      if (moved(before, streams.get(i).annual(), share)) {
        moved.add(streams.get(i));
      }
    }
    return moved;
  }

  private static boolean moved(Matter before, Matter now, double share) {
    for (Conserved quantity : Conserved.values()) {
      double size = Math.max(Math.abs(quantity.of(before)), Math.abs(quantity.of(now)));
      if (Math.abs(quantity.of(now) - quantity.of(before)) > share * size) {
        return true;
      }
    }
    return false;
  }
}
