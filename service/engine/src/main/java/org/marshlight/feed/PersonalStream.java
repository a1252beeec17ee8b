package org.marshlight.feed;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/** One of the streams that a person sends to the drain, for one person and day. */
@CatalogueRow("personal-streams")
public record PersonalStream(
    @Coefficient("water") double waterKg,
    @Coefficient("volatile-solids") double volatileSolidsKg,
    @Coefficient("fixed-solids") double fixedSolidsKg,
    @Coefficient("cod") double codKg,
    @Coefficient("carbon") double carbonKg,
    @Coefficient("nitrogen") double nitrogenKg,
    @Coefficient("ammonium-share") double ammoniumShare,
    @Coefficient("phosphorus") double phosphorusKg,
    @Coefficient("potassium") double potassiumKg,
    @Coefficient("bod5-per-cod") double bod5PerCod,
    @Coefficient("settled-share") double settledShare,
    @Coefficient("degradable-share") double degradableShare,
    @Coefficient("hydrolysis-rate-35") double hydrolysisRate35PerDay) {

  /** Carbon that urea gives as carbon dioxide for each kg of its nitrogen: CO(NH2)2. */
  private static final double UREA_CARBON = Stoichiometry.CARBON / (2 * Stoichiometry.NITROGEN);

  /** Matter of one person and day; ammonium from urea brings its carbon dioxide with it. */
  public Matter matter() {
    double ammonium = nitrogenKg * ammoniumShare;
    return new Matter(
        waterKg,
        volatileSolidsKg,
        fixedSolidsKg,
        codKg,
        carbonKg,
        ammonium * UREA_CARBON,
        nitrogenKg - ammonium,
        ammonium,
        0,
        phosphorusKg,
        potassiumKg);
  }

  /** How it behaves in a tank. */
  public Digestibility digestibility() {
    return new Digestibility(degradableShare, hydrolysisRate35PerDay, settledShare, bod5PerCod);
  }
}
