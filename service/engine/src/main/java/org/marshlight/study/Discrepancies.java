package org.marshlight.study;

import org.marshlight.evidence.Coefficient;

/**
 * How far measurements lie from the models whose coefficients are right, stage by stage.
 *
 * @param tankHeat measured less modelled liquor temperature, K
 * @param digester measured over modelled gas
 * @param wetland measured over modelled quality of the outflow
 * @param crop measured over modelled yield
 * @param ethanol measured over modelled alcohol
 * @param compost measured over modelled compost
 */
public record Discrepancies(
    @Coefficient("study.discrepancy.tank-heat") double tankHeat,
    @Coefficient("study.discrepancy.digester") double digester,
    @Coefficient("study.discrepancy.wetland") double wetland,
    @Coefficient("study.discrepancy.crop") double crop,
    @Coefficient("study.discrepancy.ethanol") double ethanol,
    @Coefficient("study.discrepancy.compost") double compost) {}
