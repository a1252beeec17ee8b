package org.marshlight.wetland;

import java.util.List;

/**
 * Where what leaves the beds goes: names of processes or parties.
 *
 * @param water receiver of the last bed's outflow
 * @param organs receivers of the storage organs lifted; their fractions sum to one
 * @param tops receivers of the tops cut; their fractions sum to one
 */
public record Destinations(String water, List<Share> organs, List<Share> tops) {

  /**
   * One receiver.
   *
   * @param party name of the process or party
   * @param fraction share that it gets, 0 to 1
   */
  public record Share(String party, double fraction) {}

  public Destinations {
    organs = List.copyOf(organs);
    tops = List.copyOf(tops);
  }

  /** One receiver for each. */
  public static Destinations of(String water, String organs, String tops) {
    return new Destinations(water, List.of(new Share(organs, 1)), List.of(new Share(tops, 1)));
  }
}
