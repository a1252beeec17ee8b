package org.marshlight.ethanol;

import java.util.List;
import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/** Plans and harvests for the tests of the still. */
final class Stills {

  static final CoefficientSet CENTRAL = CoefficientBook.standard().central();

  private Stills() {}

  static FuelDesign fuel(MashRoute route, String heat) {
    return new FuelDesign(1.0, route, null, heat);
  }

  static StillDesign pot(int runs) {
    return new StillDesign(StillKind.POT, 10.0, 3.0, runs, 0.0, null);
  }

  static StillDesign column(double plates, double reflux, double recovered) {
    return new StillDesign(StillKind.COLUMN, plates, reflux, 2, recovered, null);
  }

  /** Organs of a dry mass, moisture and starch share; the rest of them is like plant matter. */
  static Harvest.Lot lot(String plant, double dryKg, double moisture, double starchShare) {
    double volatileSolids = 0.93 * dryKg;
    Matter organs =
        new Matter(
            dryKg * moisture / (1 - moisture),
            volatileSolids,
            dryKg - volatileSolids,
            1.22 * volatileSolids,
            0.46 * volatileSolids,
            0,
            0.012 * dryKg,
            0,
            0,
            0.0025 * dryKg,
            0.02 * dryKg);
    return new Harvest.Lot("bed-1", plant, organs, starchShare * dryKg, 0.02 * dryKg, Matter.NONE);
  }

  static Harvest harvest(Harvest.Lot... lots) {
    return new Harvest(List.of(lots));
  }

  static EthanolOutcome run(FuelDesign fuel, StillDesign still, Harvest harvest) {
    return EthanolModel.run(
        fuel, still, harvest, CENTRAL, true, "heap", EthanolWaterEquilibrium.STANDARD_KPA);
  }
}
