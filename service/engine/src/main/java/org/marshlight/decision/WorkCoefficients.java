package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** Hours of work by task. */
public record WorkCoefficients(
    @Coefficient("decision.work-feeding") double feedingHoursPerDay,
    @Coefficient("decision.work-quilt") double quiltHoursPerDay,
    @Coefficient("decision.work-glass") double glassHoursPerMonth,
    @Coefficient("decision.work-gas-checks") double gasHoursPerMonth,
    @Coefficient("decision.work-tank-checks") double tankHoursPerMonth,
    @Coefficient("decision.work-desludging") double desludgingHours,
    @Coefficient("decision.work-bed-care") double bedHoursPerM2Month,
    @Coefficient("decision.work-harvest") double harvestHoursPerM2,
    @Coefficient("decision.work-cutting-tops") double cuttingHoursPerM2,
    @Coefficient("decision.work-mashing") double mashingHoursPerHectolitre,
    @Coefficient("decision.work-building-heap") double buildingHoursPerM3,
    @Coefficient("decision.work-turning-heap") double turningHoursPerM3,
    @Coefficient("decision.work-spreading") double spreadingHoursPerM3) {}
