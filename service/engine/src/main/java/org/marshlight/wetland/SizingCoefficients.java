package org.marshlight.wetland;

import org.marshlight.evidence.Coefficient;

/** Numbers of the public sizing rules, of loading limits and of soil absorption. */
public record SizingCoefficients(
    @Coefficient("wetland.load-usual") double loadUsual,
    @Coefficient("wetland.load-warn") double loadWarn,
    @Coefficient("wetland.load-refuse") double loadRefuse,
    @Coefficient("wetland.epa-load-for-30") double epaLoadFor30,
    @Coefficient("wetland.epa-load-for-20") double epaLoadFor20,
    @Coefficient("wetland.epa-open-load-for-20") double epaOpenLoadFor20,
    @Coefficient("wetland.tva-area") double tvaArea,
    @Coefficient("wetland.person-area") double personArea,
    @Coefficient("wetland.person-flow") double personFlow,
    @Coefficient("wetland.reed-target") double reedTarget,
    @Coefficient("wetland.reserve-share") double reserveShare,
    @Coefficient("wetland.treated-acceptance") double treatedAcceptance) {}
