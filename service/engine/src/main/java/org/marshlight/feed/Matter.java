package org.marshlight.feed;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * An amount of matter, by what is conserved in it. COD is counted as electron equivalents against
 * water, carbon dioxide, ammonia, phosphate and sulphate.
 *
 * @param waterKg liquid water, reaction water not included
 */
@Meaning("An amount of matter, by what is conserved in it.")
public record Matter(
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Liquid water.")
        double waterKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Dry organic mass.")
        double volatileSolidsKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Dry mineral mass.")
        double fixedSolidsKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Chemical oxygen demand.")
        double codKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Carbon in organic matter and methane.")
        double organicCarbonKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Carbon in carbon dioxide and bicarbonate.")
        double inorganicCarbonKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Nitrogen in organic matter.")
        double organicNitrogenKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Nitrogen in ammonium and ammonia.")
        double ammoniumNitrogenKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Nitrogen in nitrate, nitrite and nitrogen gas.")
        double nitrateNitrogenKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Phosphorus.")
        double phosphorusKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Potassium.")
        double potassiumKg) {

  /** No matter at all. */
  public static final Matter NONE = new Matter(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

  /** Water alone. */
  public static Matter water(double kg) {
    return new Matter(kg, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
  }

  /** Oxygen demand met by oxygen from the air, which the COD balance counts as an output. */
  public static Matter oxidised(double codKg) {
    return new Matter(0, 0, 0, codKg, 0, 0, 0, 0, 0, 0, 0);
  }

  /** Carbon in carbon dioxide. */
  public static Matter carbonDioxide(double carbonKg) {
    return new Matter(0, 0, 0, 0, 0, carbonKg, 0, 0, 0, 0, 0);
  }

  /** Nitrogen in ammonia that leaves to the air. */
  public static Matter ammonia(double nitrogenKg) {
    return new Matter(0, 0, 0, 0, 0, 0, 0, nitrogenKg, 0, 0, 0);
  }

  /** Methane of a given COD. */
  public static Matter methane(double codKg) {
    return new Matter(
        0,
        codKg / Stoichiometry.METHANE_COD,
        0,
        codKg,
        codKg / Stoichiometry.METHANE_COD * Stoichiometry.METHANE_CARBON,
        0,
        0,
        0,
        0,
        0,
        0);
  }

  public Matter plus(Matter other) {
    return new Matter(
        waterKg + other.waterKg,
        volatileSolidsKg + other.volatileSolidsKg,
        fixedSolidsKg + other.fixedSolidsKg,
        codKg + other.codKg,
        organicCarbonKg + other.organicCarbonKg,
        inorganicCarbonKg + other.inorganicCarbonKg,
        organicNitrogenKg + other.organicNitrogenKg,
        ammoniumNitrogenKg + other.ammoniumNitrogenKg,
        nitrateNitrogenKg + other.nitrateNitrogenKg,
        phosphorusKg + other.phosphorusKg,
        potassiumKg + other.potassiumKg);
  }

  public Matter times(double factor) {
    return new Matter(
        waterKg * factor,
        volatileSolidsKg * factor,
        fixedSolidsKg * factor,
        codKg * factor,
        organicCarbonKg * factor,
        inorganicCarbonKg * factor,
        organicNitrogenKg * factor,
        ammoniumNitrogenKg * factor,
        nitrateNitrogenKg * factor,
        phosphorusKg * factor,
        potassiumKg * factor);
  }

  public Matter minus(Matter other) {
    return plus(other.times(-1));
  }

  /** Sum of amounts, in order. */
  public static Matter sum(Iterable<Matter> amounts) {
    Matter sum = NONE;
    for (Matter amount : amounts) {
      sum = sum.plus(amount);
    }
    return sum;
  }

  /** All carbon, kg. */
  public double carbonKg() {
    return organicCarbonKg + inorganicCarbonKg;
  }

  /** All nitrogen, kg. */
  public double nitrogenKg() {
    return organicNitrogenKg + ammoniumNitrogenKg + nitrateNitrogenKg;
  }

  /** Dry mass, kg. */
  public double totalSolidsKg() {
    return volatileSolidsKg + fixedSolidsKg;
  }

  /** Mass as it stands, kg. */
  public double freshKg() {
    return waterKg + totalSolidsKg();
  }
}
