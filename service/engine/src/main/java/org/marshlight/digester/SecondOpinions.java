package org.marshlight.digester;

import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;

/** Independent estimates of a tank's methane, for comparison. */
final class SecondOpinions {

  /** Below this the estimate of Chen and Hashimoto predicts nothing where tanks still gas. */
  private static final double LEAST_CHEN_HASHIMOTO_C = 15;

  private SecondOpinions() {}

  static List<DigesterEstimate.SecondOpinion> of(
      DigesterModel.Inputs inputs,
      double liquidM3,
      HeatYear warmth,
      Matter fed,
      CoefficientSet set) {
    return List.of(
        opinion(
            "digester.inventory-factor",
            inputs.personDays() > 0 ? inventory(inputs.personDays(), set) : null,
            "diaz-valbuena-2011"),
        opinion(
            "digester.cod-ceiling", Stoichiometry.methaneOfCodNm3(fed.codKg()), "stoichiometry"),
        opinion(
            "digester.degradable-ceiling",
            Stoichiometry.methaneOfCodNm3(degradableCod(inputs.wastes())),
            "stoichiometry"),
        opinion(
            "digester.chen-hashimoto",
            chenHashimoto(inputs.wastes(), liquidM3, warmth, fed),
            "chen-hashimoto-1978"));
  }

  private static double inventory(double personDays, CoefficientSet set) {
    double kg = set.bind(StabilityCoefficients.class).inventoryFactor() / 1000 * personDays;
    return Stoichiometry.methaneOfCodNm3(kg * Stoichiometry.METHANE_COD);
  }

  private static double degradableCod(List<Waste> wastes) {
    double cod = 0;
    for (Waste waste : wastes) {
      cod += waste.annual().codKg() * waste.digestibility().degradableShare();
    }
    return cod;
  }

  /** As one stirred tank at the year's mean temperature and load. */
  private static Double chenHashimoto(
      List<Waste> wastes, double liquidM3, HeatYear warmth, Matter fed) {
    double temperature = warmth.meanLiquorC();
    double inflowM3 = fed.waterKg() / 1000;
    if (temperature < LEAST_CHEN_HASHIMOTO_C
        || temperature > 60
        || inflowM3 <= 0
        || fed.volatileSolidsKg() <= 0) {
      return null;
    }
    double retention = liquidM3 / inflowM3 * Months.DAYS_PER_YEAR;
    double strength = fed.volatileSolidsKg() / inflowM3;
    double ultimate = Stoichiometry.methaneOfCodNm3(degradableCod(wastes)) / fed.volatileSolidsKg();
    if (retention < 1 || retention > 1000 || strength > 120) {
      return null;
    }
    return MethaneKinetics.chenHashimotoYield(
            ultimate, strength, retention, MethaneKinetics.chenHashimotoGrowth(temperature))
        * liquidM3
        * Months.DAYS_PER_YEAR;
  }

  private static DigesterEstimate.SecondOpinion opinion(
      String code, Double methaneNm3, String source) {
    return new DigesterEstimate.SecondOpinion(
        code, methaneNm3, Sentences.text(code, java.util.Map.of()), source);
  }
}
