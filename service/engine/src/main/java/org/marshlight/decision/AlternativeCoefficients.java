package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** What the glass, its money or the wastes would give otherwise. */
public record AlternativeCoefficients(
    @Coefficient("decision.water-heater-efficiency") double waterHeaterEfficiency,
    @Coefficient("decision.module-efficiency") double moduleEfficiency,
    @Coefficient("decision.inverter-efficiency") double inverterEfficiency,
    @Coefficient("decision.module-loss-soiling") double soiling,
    @Coefficient("decision.module-loss-shading") double shading,
    @Coefficient("decision.module-loss-mismatch") double mismatch,
    @Coefficient("decision.module-loss-wiring") double wiring,
    @Coefficient("decision.module-loss-connections") double connections,
    @Coefficient("decision.module-loss-light-induced") double lightInduced,
    @Coefficient("decision.module-loss-nameplate") double nameplate,
    @Coefficient("decision.module-loss-availability") double availability,
    @Coefficient("decision.other-insulation") double insulationM2KW,
    @Coefficient("decision.other-feeding") double moreFeeding,
    @Coefficient("decision.scraps-per-person") double scrapsKgPerDay) {}
