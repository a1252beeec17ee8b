package org.marshlight.ethanol;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Batch distillation without plates (Rayleigh): each bit of vapour is in equilibrium with what is
 * left and is taken away at once. At 101.325 kPa, for liquids weaker than the azeotrope.
 */
public final class Rayleigh {

  /** Intervals of Simpson's rule over the logarithm of the mole fraction; an even number. */
  private static final int INTERVALS = 400;

  /** Weakest residue that is looked for. */
  private static final double WEAKEST = 1e-30;

  private Rayleigh() {}

  /** What is left of a charge. */
  @Formula(
      id = "ethanol.rayleigh-residue",
      symbol = "W1/W0",
      expression = "exp(-integral from x1 to x0 of dx / (y(x) - x))",
      unit = "1",
      meaning = "Moles left of a charge when it has weakened from one mole fraction to another.",
      source = "rayleigh-1902",
      equation = "batch distillation of a binary mixture")
  public static double residueFraction(
      @Argument(symbol = "x0", unit = "1", min = 0.00001, max = 0.88) double chargeMoleFraction,
      @Argument(symbol = "x1", unit = "1", min = 0.000001, max = 0.88) double endMoleFraction) {
    if (endMoleFraction >= chargeMoleFraction) {
      return 1;
    }
    double start = FastMath.log(endMoleFraction);
    double step = (FastMath.log(chargeMoleFraction) - start) / INTERVALS;
    double sum = integrand(endMoleFraction) + integrand(chargeMoleFraction);
    for (int i = 1; i < INTERVALS; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * integrand(FastMath.exp(start + i * step));
    }
    return FastMath.exp(-sum * step / 3);
  }

  /** Strength of all that has come over. */
  @Formula(
      id = "ethanol.rayleigh-distillate",
      symbol = "x_D",
      expression = "(x0 - x1 W1/W0) / (1 - W1/W0)",
      unit = "1",
      meaning = "Mean mole fraction of ethanol in the distillate of a batch.",
      source = "rayleigh-1902",
      equation = "balance of the batch")
  public static double distillateMoleFraction(
      @Argument(symbol = "x0", unit = "1", min = 0.00001, max = 0.88) double chargeMoleFraction,
      @Argument(symbol = "x1", unit = "1", min = 0.000001, max = 0.88) double endMoleFraction) {
    double residue = residueFraction(chargeMoleFraction, endMoleFraction);
    return (chargeMoleFraction - residue * endMoleFraction) / (1 - residue);
  }

  /** How weak the residue is after a share of the charge has come over. */
  @Formula(
      id = "ethanol.rayleigh-end",
      symbol = "x1",
      expression = "root of W1/W0(x0, x1) = 1 - D/W0",
      unit = "1",
      meaning = "Mole fraction left in a batch after a share of its moles has come over.",
      source = "rayleigh-1902",
      equation = "batch distillation of a binary mixture")
  public static double endMoleFraction(
      @Argument(symbol = "x0", unit = "1", min = 0.001, max = 0.88) double chargeMoleFraction,
      @Argument(symbol = "D/W0", unit = "1", min = 0.001, max = 0.9) double distilledFraction) {
    double logarithm =
        Root.of(
            u -> residueFraction(chargeMoleFraction, FastMath.exp(u)) - 1 + distilledFraction,
            FastMath.log(WEAKEST),
            FastMath.log(chargeMoleFraction));
    return FastMath.exp(logarithm);
  }

  private static double integrand(double moleFraction) {
    return moleFraction / (EquilibriumCurve.STANDARD.vapour(moleFraction) - moleFraction);
  }
}
