package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** What gases weigh, and how much of them escapes where. */
public record WarmingCoefficients(
    @Coefficient("decision.gwp100-methane") double methane100,
    @Coefficient("decision.gwp20-methane") double methane20,
    @Coefficient("decision.gwp100-nitrous-oxide") double nitrousOxide100,
    @Coefficient("decision.gwp20-nitrous-oxide") double nitrousOxide20,
    @Coefficient("decision.dissolved-escaping") double dissolvedEscaping,
    @Coefficient("decision.flare-slip") double flareSlip,
    @Coefficient("decision.burner-slip") double burnerSlip,
    @Coefficient("decision.open-water-nitrous-oxide") double openWaterNitrousOxide,
    @Coefficient("decision.gravel-bed-nitrous-oxide") double gravelBedNitrousOxide,
    @Coefficient("decision.outflow-nitrous-oxide") double outflowNitrousOxide,
    @Coefficient("decision.land-nitrous-oxide") double landNitrousOxide,
    @Coefficient("decision.heap-methane") double heapMethane,
    @Coefficient("decision.heap-nitrous-oxide") double heapNitrousOxide,
    @Coefficient("decision.store-methane") double storeMethane,
    @Coefficient("decision.store-nitrous-oxide") double storeNitrousOxide,
    @Coefficient("decision.refuse-methane") double refuseMethane,
    @Coefficient("decision.fate-nitrogen-lost") double fateNitrogenLost,
    @Coefficient("decision.fertiliser-gases") double fertiliserGases) {}
