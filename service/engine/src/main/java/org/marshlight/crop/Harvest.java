package org.marshlight.crop;

import java.util.List;
import org.marshlight.feed.Matter;

/**
 * What is taken off the beds in a year, a lot for each bed.
 *
 * @param lots one lot for each bed, in the order of the flow
 */
public record Harvest(List<Lot> lots) {

  /** Nothing harvested. */
  public static final Harvest NONE = new Harvest(List.of());

  /**
   * What is taken off one bed.
   *
   * @param from name of the bed's process
   * @param plant id of the plant
   * @param organs storage organs as lifted, their water included
   * @param starchKg starch in the organs
   * @param sugarKg free sugar in the organs, as hexose
   * @param tops tops as cut, their water included
   */
  public record Lot(
      String from, String plant, Matter organs, double starchKg, double sugarKg, Matter tops) {}
}
