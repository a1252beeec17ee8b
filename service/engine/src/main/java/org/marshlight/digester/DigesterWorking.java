package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;

/** The steps behind a tank's year, at its mean temperature, for a reader to redo by hand. */
final class DigesterWorking {

  private DigesterWorking() {}

  static List<Step> steps(DigesterModel.Inputs inputs, TankYear year, CoefficientSet set) {
    TankGeometry geometry = year.geometry();
    CoverDesign cover = year.cover();
    HeatYear warmth = year.warmth();
    DigestionYear matter = year.matter();
    List<Step> steps = new ArrayList<>();
    ground(inputs, geometry, steps);
    if (cover.kind() == CoverKind.GLAZED) {
      glass(cover, set.bind(HeatCoefficients.class), steps);
    }
    DigestionCoefficients digestion = set.bind(DigestionCoefficients.class);
    double mean = Math.max(-5, Math.min(80, warmth.meanLiquorC()));
    steps.add(Step.of("digester.arrhenius-factor", mean, digestion.hydrolysisActivation()));
    steps.add(
        Step.of(
            "digester.cold-capacity", mean, digestion.coldZero(), digestion.coldCapacityAtTen()));
    double produced = Months.sum(matter.methaneCodPeople) + Months.sum(matter.methaneCodOther);
    Step methane = Step.of("feed.methane-of-cod", produced);
    steps.add(methane);
    steps.add(Step.of("digester.methane-energy", methane.value()));
    outflow(inputs.year().site(), mean, digestion, steps);
    return List.copyOf(steps);
  }

  /** Methane dissolved at the pressure of the site, and what leaves with the outflow. */
  private static void outflow(
      SiteClimate site, double temperatureC, DigestionCoefficients digestion, List<Step> steps) {
    Step pressure = Step.of("climate.atmospheric-pressure", site.elevationM());
    Step equilibrium =
        Step.of(
            "digester.dissolved-methane",
            temperatureC,
            pressure.value() * 1000 * digestion.methaneFraction());
    steps.add(pressure);
    steps.add(equilibrium);
    steps.add(
        Step.of("digester.methane-in-outflow", equilibrium.value(), digestion.oversaturation()));
  }

  private static void ground(DigesterModel.Inputs inputs, TankGeometry geometry, List<Step> steps) {
    SiteClimate site = inputs.year().site();
    double conductivity = site.soil().conductivityWMK();
    double wetted = geometry.planAreaM2() + geometry.perimeterM() * geometry.liquidDepthM();
    double surface = wetted + geometry.planAreaM2();
    double middle = geometry.floorDepthM() - geometry.liquidDepthM() / 2;
    Step shape = Step.of("digester.pit-shape-factor", wetted, surface, middle);
    Step steady =
        Step.of(
            "digester.pit-steady-loss",
            inputs.tank().wallResistanceM2KW(),
            wetted,
            conductivity,
            shape.value());
    Step penetration =
        Step.of(
            "digester.periodic-penetration-depth",
            conductivity,
            site.soil().heatCapacityMJM3K() * 1e6);
    double share = steady.value() / (conductivity * shape.value());
    steps.add(shape);
    steps.add(steady);
    steps.add(penetration);
    steps.add(
        Step.of("digester.pit-internal-loss", steady.value(), share, surface, penetration.value()));
    steps.add(
        Step.of("digester.pit-external-swing", steady.value(), share, middle, penetration.value()));
    steps.add(Step.of("digester.pit-external-lag", share, middle, penetration.value()));
  }

  private static void glass(CoverDesign cover, HeatCoefficients heat, List<Step> steps) {
    Step angle = Step.of("digester.sky-diffuse-angle", cover.tiltDeg());
    double radians = FastMath.toRadians(angle.value());
    Step refraction = Step.of("digester.refraction-angle", radians, heat.glassIndex());
    Step reflection =
        Step.of("digester.transmittance-of-reflection", radians, heat.glassIndex(), cover.layers());
    Step absorption =
        Step.of(
            "digester.transmittance-of-absorption",
            heat.glassExtinction(),
            heat.glassThickness(),
            cover.layers(),
            refraction.value());
    steps.add(angle);
    steps.add(refraction);
    steps.add(reflection);
    steps.add(absorption);
    steps.add(
        Step.of(
            "digester.transmittance-absorptance",
            reflection.value(),
            absorption.value(),
            cover.absorptance()));
  }
}
