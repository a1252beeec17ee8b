package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.WaterStream;

/**
 * Water that comes to the beds from one process or party.
 *
 * @param party where it comes from
 * @param stream what comes
 */
public record Intake(String party, WaterStream stream) {

  /** All intakes in one stream; temperatures and coliforms by volume. */
  static WaterStream mixed(List<Intake> intakes) {
    if (intakes.size() == 1) {
      return intakes.get(0).stream();
    }
    List<Matter> matter = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    double[] coliforms = new double[Months.COUNT];
    double[] temperature = new double[Months.COUNT];
    boolean human = false;
    for (int month = 0; month < Months.COUNT; month++) {
      Matter sum = Matter.NONE;
      double volume = 0;
      for (Intake intake : intakes) {
        WaterStream stream = intake.stream();
        sum = sum.plus(stream.monthly().get(month));
        bod5[month] += stream.bod5Kg()[month];
        solids[month] += stream.suspendedSolidsKg()[month];
        volume += stream.volumeM3(month);
        coliforms[month] += stream.faecalColiformsPer100ML()[month] * stream.volumeM3(month);
        temperature[month] += stream.temperatureC()[month] * stream.volumeM3(month);
        human |= stream.humanOrigin();
      }
      matter.add(sum);
      coliforms[month] = volume > 0 ? coliforms[month] / volume : 0;
      temperature[month] =
          volume > 0 ? temperature[month] / volume : intakes.get(0).stream().temperatureC()[month];
    }
    return new WaterStream(List.copyOf(matter), bod5, solids, coliforms, temperature, human);
  }

  /** The year's matter of each party. */
  static Map<String, Matter> byParty(List<Intake> intakes) {
    Map<String, Matter> byParty = new LinkedHashMap<>();
    for (Intake intake : intakes) {
      byParty.merge(intake.party(), intake.stream().annual(), Matter::plus);
    }
    return byParty;
  }

  /** The part of a stream that flows in the months marked, or in the others. */
  static WaterStream in(WaterStream stream, boolean[] months, boolean marked) {
    List<Matter> matter = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    double[] coliforms = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      boolean flows = months[month] == marked;
      matter.add(flows ? stream.monthly().get(month) : Matter.NONE);
      bod5[month] = flows ? stream.bod5Kg()[month] : 0;
      solids[month] = flows ? stream.suspendedSolidsKg()[month] : 0;
      coliforms[month] = flows ? stream.faecalColiformsPer100ML()[month] : 0;
    }
    return new WaterStream(
        List.copyOf(matter), bod5, solids, coliforms, stream.temperatureC(), stream.humanOrigin());
  }
}
