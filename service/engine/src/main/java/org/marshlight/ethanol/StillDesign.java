package org.marshlight.ethanol;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * The still.
 *
 * @param theoreticalPlates plates of a column, reboiler not counted
 * @param runs times that a pot distils its own distillate, the first run included
 * @param targetStrengthPercentVol strength that is asked of the still; none if not given, and then
 *     the strength is a result alone
 */
@Meaning("The still.")
public record StillDesign(
    @Meaning("Batch pot or column.") @Usual("pot") StillKind kind,
    @Quantity(
            unit = "1",
            min = 1,
            max = 80,
            meaning = "Theoretical plates of a column, reboiler not counted.",
            usual = "ethanol.default.theoretical-plates")
        Double theoreticalPlates,
    @Quantity(
            unit = "1",
            min = 0.05,
            max = 100,
            meaning = "Reflux to distillate, mole for mole.",
            usual = "ethanol.default.reflux-ratio")
        Double refluxRatio,
    @Quantity(
            unit = "1",
            min = 1,
            max = 2,
            meaning = "Runs of a pot, the first included.",
            usual = "ethanol.default.pot-runs")
        Integer runs,
    @Quantity(
            unit = "1",
            min = 0,
            max = 0.95,
            meaning = "Share of the stillage's heat that preheats the feed.",
            usual = "ethanol.default.feed-heat-recovered")
        Double feedHeatRecoveredFraction,
    @Quantity(
            unit = "%{vol}",
            min = 1,
            max = 97,
            meaning =
                "Strength asked of the still, below that of the azeotrope; if not given, strength"
                    + " is a result alone.")
        Double targetStrengthPercentVol) {}
