package org.marshlight.digester;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the digester package adds to the books. */
public final class Digester implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(
        GlazingOptics.class,
        CoverHeatTransfer.class,
        Stagnation.class,
        SepticSizing.class,
        Sulphide.class,
        GroundCoupling.class,
        PitCoupling.class,
        MethaneKinetics.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(
        HeatCoefficients.class,
        StagnationCoefficients.class,
        SepticRule.class,
        DigestionCoefficients.class,
        GasCoefficients.class,
        StabilityCoefficients.class);
  }
}
