package org.marshlight.feed;

import java.util.ArrayList;
import java.util.List;

/**
 * A process's own books for a year: what it received, gave and kept. The loop's balances are made
 * from the books of all processes; a process that creates or loses matter shows in them.
 *
 * @param process name of the process, for instance {@code tank}
 * @param received what came in, and from where
 * @param gave what went out, and where to
 * @param kept what is held more at the year's end than at its start
 */
public record Account(String process, List<Entry> received, List<Entry> gave, Matter kept) {

  /**
   * One line of the books.
   *
   * @param party the other process, or a name outside the loop such as {@code air}
   * @param matter how much in the year
   */
  public record Entry(String party, Matter matter) {}

  /** Opens the books of a process. */
  public static Books of(String process) {
    return new Books(process);
  }

  /** Books being written. */
  public static final class Books {

    private final String process;
    private final List<Entry> received = new ArrayList<>();
    private final List<Entry> gave = new ArrayList<>();
    private Matter kept = Matter.NONE;

    private Books(String process) {
      this.process = process;
    }

    public Books received(String from, Matter matter) {
      received.add(new Entry(from, matter));
      return this;
    }

    public Books gave(String to, Matter matter) {
      gave.add(new Entry(to, matter));
      return this;
    }

    /**
     * Books water that reactions set free, or take up where it is below nought.
     *
     * @param kg how much in the year
     */
    public Books reactionWater(double kg) {
      return kg >= 0
          ? received(Party.REACTION, Matter.water(kg))
          : gave(Party.REACTION, Matter.water(-kg));
    }

    public Books kept(Matter matter) {
      kept = kept.plus(matter);
      return this;
    }

    /** Closes the books. */
    public Account close() {
      return new Account(process, List.copyOf(received), List.copyOf(gave), kept);
    }
  }
}
