package org.marshlight.ethanol;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.Stoichiometry;

/**
 * Density and strength of mixtures of ethanol and water by the international alcoholometric tables
 * (OIML R 22, 1975). Strength by volume is at 20 Cel.
 */
public final class Alcoholometry {

  /** Molar mass of ethanol, kg/kmol. */
  public static final double ETHANOL =
      2 * Stoichiometry.CARBON + 6 * Stoichiometry.HYDROGEN + Stoichiometry.OXYGEN;

  /** Molar mass of water, kg/kmol. */
  public static final double WATER = 2 * Stoichiometry.HYDROGEN + Stoichiometry.OXYGEN;

  private static final double REFERENCE_C = 20;

  /** Powers of the mass fraction at 20 Cel, from the zeroth. */
  private static final double[] A = {
    998.2012300,
    -192.9769495,
    389.1238958,
    -1668.103923,
    13522.15441,
    -88292.78388,
    306287.4042,
    -613838.1234,
    747017.2998,
    -547846.1354,
    223446.0334,
    -39032.85426
  };

  /** Powers of the temperature difference for water, from the first. */
  private static final double[] B = {
    -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11
  };

  /** Mixed terms: row i holds the powers of the mass fraction, from the first, for power i + 1. */
  private static final double[][] C = {
    {
      1.693443461530087e-1,
      -1.046914743455169e1,
      7.196353469546523e1,
      -7.047478054272792e2,
      3.924090430035045e3,
      -1.210164659068747e4,
      2.248646550400788e4,
      -2.605562982188164e4,
      1.852373922069467e4,
      -7.420201433430137e3,
      1.285617841998974e3
    },
    {
      -1.193013005057010e-2,
      2.517399633803461e-1,
      -2.170575700536993,
      1.353034988843029e1,
      -5.029988758547014e1,
      1.096355666577570e2,
      -1.422753946421155e2,
      1.080435942856230e2,
      -4.414153236817392e1,
      7.442971530188783
    },
    {
      -6.802995733503803e-4,
      1.876837790289664e-2,
      -2.002561813734156e-1,
      1.022992966719220,
      -2.895696483903638,
      4.810060584300675,
      -4.672147440794683,
      2.458043105903461,
      -5.411227621436812e-1
    },
    {4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6},
    {-2.788074354782409e-8, 1.345612883493354e-8}
  };

  /** Density of pure ethanol at 20 Cel, kg/m3. */
  public static final double PURE_DENSITY_KG_M3 = densityKgM3(1, REFERENCE_C);

  private Alcoholometry() {}

  /** Density of a mixture. */
  @Formula(
      id = "ethanol.density",
      symbol = "rho",
      expression =
          "A1 + sum A_k p^(k-1) + sum B_k (t - 20)^k + sum_i sum_k C_i,k p^k (t - 20)^i,"
              + " with the 12, 6 and 36 coefficients of the source",
      unit = "kg/m3",
      meaning = "Density of a mixture of ethanol and water.",
      source = "oiml-r22",
      equation = "general formula")
  public static double densityKgM3(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double massFraction,
      @Argument(symbol = "t", unit = "Cel", min = -20, max = 40) double temperatureC) {
    double difference = temperatureC - REFERENCE_C;
    double density = polynomial(A, massFraction) + difference * polynomial(B, difference);
    double power = 1;
    for (double[] row : C) {
      power *= difference;
      density += power * massFraction * polynomial(row, massFraction);
    }
    return density;
  }

  /** Strength by volume of a mixture of known strength by mass. */
  @Formula(
      id = "ethanol.volume-fraction",
      symbol = "q",
      expression = "p rho(p, 20) / rho(1, 20)",
      unit = "1",
      meaning = "Volume of pure ethanol in a volume of the mixture, both at 20 Cel.",
      source = "oiml-r22",
      equation = "definition of strength by volume")
  public static double volumeFraction(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double massFraction) {
    return massFraction * densityKgM3(massFraction, REFERENCE_C) / PURE_DENSITY_KG_M3;
  }

  /** Strength by mass of a mixture of known strength by volume. */
  @Formula(
      id = "ethanol.mass-fraction",
      symbol = "p",
      expression = "root of p rho(p, 20) / rho(1, 20) = q",
      unit = "1",
      meaning = "Mass of ethanol in a mass of the mixture.",
      source = "oiml-r22",
      equation = "definition of strength by volume, inverted")
  public static double massFraction(
      @Argument(symbol = "q", unit = "1", min = 0, max = 1) double volumeFraction) {
    if (volumeFraction <= 0 || volumeFraction >= 1) {
      return Math.min(1, Math.max(0, volumeFraction));
    }
    return Root.of(p -> volumeFraction(p) - volumeFraction, 0, 1);
  }

  /** Mole fraction of ethanol in a mixture of known strength by mass. */
  @Formula(
      id = "ethanol.mole-fraction",
      symbol = "x",
      expression = "(p / M_E) / (p / M_E + (1 - p) / M_W)",
      unit = "1",
      meaning = "Mole fraction of ethanol in a mixture with water.",
      source = "stoichiometry")
  public static double moleFraction(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double massFraction) {
    double ethanol = massFraction / ETHANOL;
    return ethanol / (ethanol + (1 - massFraction) / WATER);
  }

  /** Mole fraction of ethanol in a mixture of known strength by volume. */
  static double moleFractionOfVolume(double volumeFraction) {
    return moleFraction(massFraction(volumeFraction));
  }

  private static double polynomial(double[] coefficients, double variable) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * variable + coefficients[i];
    }
    return sum;
  }
}
