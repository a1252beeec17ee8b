package org.marshlight.wetland;

import org.marshlight.evidence.Coefficient;

/**
 * Limits by use of the outflow: each a strict one, up to which water is fit, and a lenient one,
 * above which it is not.
 */
public record UseLimits(
    @Coefficient("wetland.limit.irrigation-bod5-strict") double irrigationBod5Strict,
    @Coefficient("wetland.limit.irrigation-bod5-lenient") double irrigationBod5Lenient,
    @Coefficient("wetland.limit.irrigation-solids-strict") double irrigationSolidsStrict,
    @Coefficient("wetland.limit.irrigation-solids-lenient") double irrigationSolidsLenient,
    @Coefficient("wetland.limit.irrigation-nitrogen-strict") double irrigationNitrogenStrict,
    @Coefficient("wetland.limit.irrigation-nitrogen-lenient") double irrigationNitrogenLenient,
    @Coefficient("wetland.limit.irrigation-coliforms-strict") double irrigationColiformsStrict,
    @Coefficient("wetland.limit.irrigation-coliforms-lenient") double irrigationColiformsLenient,
    @Coefficient("wetland.limit.irrigation-dissolved-solids-strict")
        double irrigationDissolvedSolidsStrict,
    @Coefficient("wetland.limit.irrigation-dissolved-solids-lenient")
        double irrigationDissolvedSolidsLenient,
    @Coefficient("wetland.limit.irrigation-sodium-strict") double irrigationSodiumStrict,
    @Coefficient("wetland.limit.irrigation-sodium-lenient") double irrigationSodiumLenient,
    @Coefficient("wetland.limit.irrigation-chloride-strict") double irrigationChlorideStrict,
    @Coefficient("wetland.limit.irrigation-chloride-lenient") double irrigationChlorideLenient,
    @Coefficient("wetland.limit.irrigation-boron-strict") double irrigationBoronStrict,
    @Coefficient("wetland.limit.irrigation-boron-lenient") double irrigationBoronLenient,
    @Coefficient("wetland.limit.discharge-bod5-strict") double dischargeBod5Strict,
    @Coefficient("wetland.limit.discharge-bod5-lenient") double dischargeBod5Lenient,
    @Coefficient("wetland.limit.discharge-solids-strict") double dischargeSolidsStrict,
    @Coefficient("wetland.limit.discharge-solids-lenient") double dischargeSolidsLenient,
    @Coefficient("wetland.limit.discharge-coliforms-strict") double dischargeColiformsStrict,
    @Coefficient("wetland.limit.discharge-coliforms-lenient") double dischargeColiformsLenient,
    @Coefficient("wetland.limit.soil-bod5-strict") double soilBod5Strict,
    @Coefficient("wetland.limit.soil-bod5-lenient") double soilBod5Lenient,
    @Coefficient("wetland.limit.soil-solids-strict") double soilSolidsStrict,
    @Coefficient("wetland.limit.soil-solids-lenient") double soilSolidsLenient) {}
