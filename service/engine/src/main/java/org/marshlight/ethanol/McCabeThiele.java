package org.marshlight.ethanol;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * A column by constant molar overflow (McCabe and Thiele), at 101.325 kPa, with a total condenser
 * and a reboiler that counts as a stage. The feed enters where the operating lines cross, its best
 * place. The last stage is counted by the part of it that is needed, so that the count is a
 * continuous function of strength and reflux.
 */
public final class McCabeThiele {

  /** Stages after which a column is held to be pinched. */
  private static final int PINCHED = 500;

  private static final double SMALLEST_STEP = 1e-13;

  /** Points of the curve that are tried for a tangent pinch. */
  private static final int SCAN = 2000;

  private static final double NEXT_TO = 1e-9;

  private McCabeThiele() {}

  /** Vapour over a boiling liquid, as the stills take it. */
  @Formula(
      id = "ethanol.measured-vapour-fraction",
      symbol = "y",
      expression = "van Laar's y(x) plus a spline through what it misses at the measured points",
      unit = "1",
      meaning =
          "Mole fraction of ethanol in the vapour at 101.325 kPa, through the seventeen measured"
              + " points.",
      source = "carey-lewis-1932")
  public static double vapourFraction(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double moleFraction) {
    return EquilibriumCurve.STANDARD.vapour(moleFraction);
  }

  /** Heat state of a feed. */
  @Formula(
      id = "ethanol.feed-quality",
      symbol = "q",
      expression = "(H - h_F) / (H - h)",
      unit = "1",
      meaning = "Heat that turns the feed to saturated vapour, over the latent heat.",
      source = "wankat-2012",
      equation = "definition of q")
  public static double feedQuality(
      @Argument(symbol = "H", unit = "kJ/kg", min = -1e5, max = 1e5) double vapourEnthalpy,
      @Argument(symbol = "h", unit = "kJ/kg", min = -1e5, max = 1e5) double liquidEnthalpy,
      @Argument(symbol = "h_F", unit = "kJ/kg", min = -1e5, max = 1e5) double feedEnthalpy) {
    return (vapourEnthalpy - feedEnthalpy) / (vapourEnthalpy - liquidEnthalpy);
  }

  /** Stages that a separation needs. */
  @Formula(
      id = "ethanol.column-stages",
      symbol = "N",
      expression =
          "steps between y(x) and the operating lines y = (R x + x_D) / (R + 1) and the line"
              + " through x_B and its crossing with the feed line, from x_D to x_B",
      unit = "1",
      meaning = "Theoretical stages of a column, the reboiler counted as one.",
      source = "mccabe-thiele-1925",
      equation = "graphical construction, worked by numbers")
  public static double stages(
      @Argument(symbol = "x_D", unit = "1", min = 0.00001, max = 0.95) double distillate,
      @Argument(symbol = "x_F", unit = "1", min = 0.000001, max = 0.95) double feed,
      @Argument(symbol = "x_B", unit = "1", min = 0.0000001, max = 0.9) double bottoms,
      @Argument(symbol = "R", unit = "1", min = 0.01, max = 10000) double refluxRatio,
      @Argument(symbol = "q", unit = "1", min = -2, max = 3) double feedQuality) {
    double stages = steps(Lines.of(distillate, feed, bottoms, refluxRatio, feedQuality), PINCHED);
    return stages < PINCHED ? stages : Double.POSITIVE_INFINITY;
  }

  /** Stages that a separation needs when all is returned. */
  @Formula(
      id = "ethanol.minimum-stages",
      symbol = "N_min",
      expression = "steps between y(x) and y = x, from x_D to x_B",
      unit = "1",
      meaning = "Theoretical stages at total reflux, the reboiler counted as one.",
      source = "mccabe-thiele-1925",
      equation = "total reflux")
  public static double minimumStages(
      @Argument(symbol = "x_D", unit = "1", min = 0.00001, max = 0.95) double distillate,
      @Argument(symbol = "x_B", unit = "1", min = 0.0000001, max = 0.9) double bottoms) {
    double stages = steps(new Lines(distillate, bottoms, 0, 1, 0, 1), PINCHED);
    return stages < PINCHED ? stages : Double.POSITIVE_INFINITY;
  }

  /** Reflux below which no number of plates is enough. */
  @Formula(
      id = "ethanol.minimum-reflux",
      symbol = "R_min",
      expression =
          "s / (1 - s), s the greatest (x_D - y(x)) / (x_D - x) from the feed's pinch to x_D",
      unit = "1",
      meaning = "Least reflux ratio, tangent pinches included.",
      source = "mccabe-thiele-1925",
      equation = "pinch")
  public static double minimumReflux(
      @Argument(symbol = "x_D", unit = "1", min = 0.00001, max = 0.95) double distillate,
      @Argument(symbol = "x_F", unit = "1", min = 0.000001, max = 0.95) double feed,
      @Argument(symbol = "q", unit = "1", min = -2, max = 3) double feedQuality) {
    EquilibriumCurve curve = EquilibriumCurve.STANDARD;
    if (distillate >= curve.azeotrope()) {
      return Double.POSITIVE_INFINITY;
    }
    double pinch = feedPinch(feed, feedQuality);
    double slope = (distillate - curve.vapour(pinch)) / (distillate - pinch);
    for (int i = 1; i < SCAN; i++) {
      double x = pinch + (distillate - pinch) * i / SCAN;
      slope = Math.max(slope, (distillate - curve.vapour(x)) / (distillate - x));
    }
    return Math.max(0, slope / (1 - slope));
  }

  /** Where the feed line meets the equilibrium curve. */
  private static double feedPinch(double feed, double feedQuality) {
    return Root.of(
        x -> (feedQuality - 1) * EquilibriumCurve.STANDARD.vapour(x) - feedQuality * x + feed,
        0,
        1);
  }

  /** Strength that a column of given plates and reflux makes. */
  @Formula(
      id = "ethanol.column-distillate",
      symbol = "x_D",
      expression = "root of N(x_D, x_F, x_B, R, q) = plates + 1",
      unit = "1",
      meaning = "Mole fraction of ethanol in the distillate of a column.",
      source = "mccabe-thiele-1925",
      equation = "construction solved for the distillate")
  public static double distillate(
      @Argument(symbol = "x_F", unit = "1", min = 0.000001, max = 0.8) double feed,
      @Argument(symbol = "x_B", unit = "1", min = 0.0000001, max = 0.8) double bottoms,
      @Argument(symbol = "plates", unit = "1", min = 1, max = 80) double theoreticalPlates,
      @Argument(symbol = "R", unit = "1", min = 0.01, max = 10000) double refluxRatio,
      @Argument(symbol = "q", unit = "1", min = -2, max = 3) double feedQuality) {
    return distillate(
        theoreticalPlates,
        feed,
        distillate -> Lines.of(distillate, feed, bottoms, refluxRatio, feedQuality));
  }

  /** Operating lines for a distillate, where the bottoms may depend on it. */
  interface LinesOfDistillate {
    Lines of(double distillate);
  }

  /** Strength at which the stages needed are those that the column has. */
  static double distillate(double theoreticalPlates, double feed, LinesOfDistillate lines) {
    double stages = theoreticalPlates + 1;
    int cap = (int) Math.ceil(stages) + 2;
    double low = feed * (1 + NEXT_TO);
    double high = EquilibriumCurve.STANDARD.azeotrope() * (1 - NEXT_TO);
    if (steps(lines.of(high), cap) <= stages) {
      return high;
    }
    if (steps(lines.of(low), cap) >= stages) {
      return Double.NaN;
    }
    return Root.of(x -> steps(lines.of(x), cap) - stages, low, high);
  }

  /** Steps from the distillate down to the bottoms, or the cap if there are more. */
  private static double steps(Lines lines, int cap) {
    double x = lines.distillate();
    double y = x;
    for (int count = 0; count < cap; count++) {
      double next = EquilibriumCurve.STANDARD.liquid(y);
      if (next <= lines.bottoms()) {
        return count + (x - lines.bottoms()) / (x - next);
      }
      if (x - next < SMALLEST_STEP) {
        return cap;
      }
      x = next;
      y = lines.vapour(x);
    }
    return cap;
  }

  /**
   * The operating lines of a column.
   *
   * @param distillate mole fraction in the distillate
   * @param bottoms mole fraction in the bottoms
   * @param crossing liquid mole fraction where the lines cross
   * @param slope slope of the rectifying line
   * @param intercept vapour at no liquid on the rectifying line
   * @param strippingSlope slope of the stripping line, which passes the bottoms on the diagonal
   */
  record Lines(
      double distillate,
      double bottoms,
      double crossing,
      double slope,
      double intercept,
      double strippingSlope) {

    static Lines of(
        double distillate, double feed, double bottoms, double refluxRatio, double feedQuality) {
      double slope = refluxRatio / (refluxRatio + 1);
      double intercept = distillate / (refluxRatio + 1);
      double crossing =
          (feed + intercept * (feedQuality - 1)) / (feedQuality - slope * (feedQuality - 1));
      double strippingSlope = (slope * crossing + intercept - bottoms) / (crossing - bottoms);
      return new Lines(distillate, bottoms, crossing, slope, intercept, strippingSlope);
    }

    double vapour(double liquid) {
      return liquid > crossing
          ? slope * liquid + intercept
          : bottoms + strippingSlope * (liquid - bottoms);
    }
  }
}
