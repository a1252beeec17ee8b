package org.marshlight.loop;

/**
 * Which stages must be run to answer for one of them. What the plan gives stands in for the stages
 * upstream of it.
 *
 * @param tank whether the tank is run
 * @param beds whether beds and plants are run
 * @param fuel whether alcohol is made
 * @param heap whether the heap is run
 */
record StagesToRun(boolean tank, boolean beds, boolean fuel, boolean heap) {

  static StagesToRun of(ResolvedPlan plan, Stage stage) {
    boolean whole = stage == Stage.LOOP || returnsToTank(plan.routes());
    boolean heap = plan.compost() != null && (whole || stage == Stage.COMPOST);
    boolean fuel =
        plan.fuel() != null
            && (stage == Stage.ETHANOL || (plan.given().stillage() == null && (whole || heap)));
    boolean beds =
        plan.hasBeds()
            && (stage == Stage.WETLAND
                || stage == Stage.CROP
                || (plan.given().harvest() == null && (whole || fuel || heap)));
    boolean sludgeToHeap = heap && plan.routes().sludge() == RoutesDesign.SludgeRoute.COMPOST;
    boolean tank =
        plan.tank() != null
            && (stage == Stage.DIGESTER
                || (plan.given().effluent() == null && (whole || beds || sludgeToHeap)));
    return new StagesToRun(tank, beds, fuel, heap);
  }

  private static boolean returnsToTank(RoutesDesign routes) {
    return routes.stillage() == RoutesDesign.ResidueRoute.TANK
        || routes.tops() == RoutesDesign.ResidueRoute.TANK;
  }
}
