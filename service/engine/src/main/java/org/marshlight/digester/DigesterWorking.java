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

  static List<Step> steps(
      DigesterModel.Inputs inputs,
      TankGeometry geometry,
      CoverDesign cover,
      HeatYear warmth,
      DigestionYear matter,
      CoefficientSet set) {
    List<Step> steps = new ArrayList<>();
    ground(inputs, geometry, set.bind(HeatCoefficients.class), steps);
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
    steps.add(Step.of("digester.dissolved-methane", mean, 101325 * digestion.methaneFraction()));
    return List.copyOf(steps);
  }

  private static void ground(
      DigesterModel.Inputs inputs, TankGeometry geometry, HeatCoefficients heat, List<Step> steps) {
    SiteClimate site = inputs.year().site();
    double conductivity = site.soil().conductivityWMK();
    double resistance = inputs.tank().wallResistanceM2KW() + heat.soilContactResistance();
    Step dimension =
        Step.of("digester.characteristic-dimension", geometry.planAreaM2(), geometry.perimeterM());
    Step floor =
        Step.of("digester.equivalent-thickness", heat.wallThickness(), conductivity, resistance);
    Step wall = Step.of("digester.equivalent-thickness", 0, conductivity, resistance);
    steps.add(dimension);
    steps.add(floor);
    steps.add(wall);
    steps.add(
        Step.of(
            "digester.floor-transmittance",
            conductivity,
            dimension.value(),
            floor.value(),
            geometry.floorDepthM()));
    steps.add(
        Step.of(
            "digester.wall-transmittance",
            conductivity,
            geometry.floorDepthM(),
            floor.value(),
            wall.value()));
    steps.add(
        Step.of(
            "digester.periodic-penetration-depth",
            conductivity,
            site.soil().heatCapacityMJM3K() * 1e6));
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
