package org.marshlight.loop;

import java.util.List;
import org.marshlight.feed.Party;
import org.marshlight.wetland.Destinations;
import org.marshlight.wetland.WaterUse;
import org.marshlight.wetland.WetlandModel;

/**
 * Who receives each stream of a plan, by the stages that are run.
 *
 * @param effluent receiver of the tank's outflow
 * @param sludge receiver of pumped sludge
 * @param stillage receiver of stillage
 * @param tops receiver of cut tops
 * @param unmashedOrgans receiver of storage organs that are not mashed
 * @param beds receivers of what leaves the beds
 */
record Receivers(
    String effluent,
    String sludge,
    String stillage,
    String tops,
    String unmashedOrgans,
    Destinations beds) {

  static Receivers of(ResolvedPlan plan, StagesToRun stages) {
    String residue = stages.heap() ? Party.HEAP : Party.LAND;
    String tops = residue(plan.routes().tops(), residue, stages);
    double mashed = stages.fuel() ? plan.fuel().mashedFraction() : 0;
    return new Receivers(
        stages.beds() ? WetlandModel.inlet(plan.diversion()) : Party.SOIL,
        stages.heap() && plan.routes().sludge() == RoutesDesign.SludgeRoute.COMPOST
            ? Party.HEAP
            : Party.HAULED_AWAY,
        residue(plan.routes().stillage(), residue, stages),
        tops,
        residue,
        new Destinations(
            plan.waterUse() == WaterUse.SOIL_ABSORPTION ? Party.SOIL : Party.WATER_USE,
            List.of(
                new Destinations.Share(Party.STILL, mashed),
                new Destinations.Share(residue, 1 - mashed)),
            List.of(new Destinations.Share(tops, 1))));
  }

  private static String residue(
      RoutesDesign.ResidueRoute route, String compostOrLand, StagesToRun stages) {
    return switch (route) {
      case COMPOST -> compostOrLand;
      case TANK -> stages.tank() ? Party.TANK : compostOrLand;
      case LAND -> Party.LAND;
    };
  }
}
