package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.http.drawing.FlowDiagram.Ribbon;

/**
 * Where energy goes in a year: the warmth of the tank, the gas, and the fuel alcohol with the heat
 * that it costs. Each of the three closes by itself.
 */
final class Energies {

  /** Processes of the three, in the order of the flow. */
  static final List<String> PROCESSES = List.of("warmth", "methane", "gas-store", "still");

  private Energies() {}

  static List<Ribbon> of(PlanEstimate estimate) {
    List<Ribbon> ribbons = new ArrayList<>();
    if (estimate.digester() != null) {
      warmth(estimate.digester(), ribbons);
      gas(estimate.digester(), ribbons);
    }
    if (estimate.ethanol() != null) {
      alcohol(estimate.ethanol(), ribbons);
    }
    return ribbons;
  }

  private static void warmth(DigesterEstimate tank, List<Ribbon> ribbons) {
    DigesterEstimate.HeatFlows flows = tank.heatFlowsKWh();
    heat(ribbons, "sun", flows.absorbedSun());
    heat(ribbons, "burned-gas", flows.burnedGas());
    heat(ribbons, "outside-air", flows.topToAir());
    heat(ribbons, "sky", flows.topToSky());
    heat(ribbons, "enclosure", flows.enclosure());
    heat(ribbons, "cover-soil", flows.coverSoil());
    heat(ribbons, "ground", flows.ground());
    heat(ribbons, "water-through", flows.inflow());
  }

  private static void heat(List<Ribbon> ribbons, String party, List<Double> months) {
    double sum = months.stream().mapToDouble(Double::doubleValue).sum();
    if (sum > 0) {
      add(ribbons, party, "warmth", sum);
    } else {
      add(ribbons, "warmth", party, -sum);
    }
  }

  private static void gas(DigesterEstimate tank, List<Ribbon> ribbons) {
    DigesterEstimate.Annual year = tank.annual();
    if (year.methaneNm3() <= 0) {
      return;
    }
    double perNm3 = year.gasEnergyKWh() / year.methaneNm3();
    add(ribbons, "wastes", "methane", year.methaneProducedNm3() * perNm3);
    add(ribbons, "methane", "outflow", year.methaneDissolvedNm3() * perNm3);
    add(ribbons, "methane", "leak", year.methaneLeakedNm3() * perNm3);
    add(ribbons, "methane", "gas-store", year.gasEnergyKWh());
    double used = 0;
    for (DigesterEstimate.Use use : tank.gas().uses()) {
      add(ribbons, "gas-store", org.marshlight.contract.WireName.of(use.use()), use.usedKWh());
      used += use.usedKWh();
    }
    add(
        ribbons,
        "gas-store",
        org.marshlight.contract.WireName.of(tank.gas().surplus()),
        year.gasEnergyKWh() - used);
  }

  private static void alcohol(EthanolEstimate fuel, List<Ribbon> ribbons) {
    double made = fuel.annual().fuelEnergyKWh();
    add(ribbons, "starch", "still", made);
    add(ribbons, "heat-fuel", "still", fuel.heat().sourceEnergyKWh());
    add(ribbons, "electricity", "still", fuel.heat().electricityKWh());
    add(ribbons, "still", "fuel-tank", made);
    add(
        ribbons,
        "still",
        "lost-heat",
        fuel.heat().sourceEnergyKWh() + fuel.heat().electricityKWh());
  }

  private static void add(List<Ribbon> ribbons, String from, String to, double amount) {
    if (amount > 1e-9) {
      ribbons.add(new Ribbon(from, to, amount));
    }
  }
}
