package org.marshlight.safety;

import org.marshlight.evidence.Coefficient;

/** Limits and the room that computed cautions are reckoned with. */
public record SafetyCoefficients(
    @Coefficient("safety.flammable-limit") double flammableLimit,
    @Coefficient("safety.flammable-limit-us") double otherFlammableLimit,
    @Coefficient("safety.alarm-share") double alarmShare,
    @Coefficient("safety.warning-share") double warningShare,
    @Coefficient("safety.room-volume") double roomM3,
    @Coefficient("safety.room-air-changes") double airChangesPerHour,
    @Coefficient("safety.leak-hours") double leakHours,
    @Coefficient("safety.mixing") double mixing,
    @Coefficient("safety.sulphide-ceiling") double sulphideCeilingPpm,
    @Coefficient("safety.household-energy") double householdKWh,
    @Coefficient("safety.household-pressure") double householdKPa,
    @Coefficient("safety.small-plant") double smallPlantProofGallons,
    @Coefficient("safety.foam-limit") double foamC,
    @Coefficient("safety.timber-limit") double timberC,
    @Coefficient("safety.plastic-pipe-limit") double plasticPipeC,
    @Coefficient("safety.plastic-pane-limit") double plasticPaneC) {}
