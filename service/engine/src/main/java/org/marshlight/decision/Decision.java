package org.marshlight.decision;

import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;

/**
 * Everything that is decided of a plan.
 *
 * @param verdicts what is worth building
 * @param money the whole plan in money; null without costs
 * @param greenhouseGas the plan against the present system; null without a tank
 * @param energyReturn energy returned on energy spent
 * @param alternatives what glass, money and wastes would give otherwise
 * @param materials what is to be bought and dug, by geometry
 * @param work hours of work
 * @param calendar the year's work and watch-points
 * @param assumptions what was taken as given
 * @param notices remarks
 */
public record Decision(
    List<Verdict> verdicts,
    MoneyEstimate money,
    GreenhouseGasEstimate greenhouseGas,
    EnergyReturnEstimate energyReturn,
    List<Alternative> alternatives,
    List<MaterialNeeded> materials,
    WorkEstimate work,
    List<CalendarEntry> calendar,
    List<Assumption> assumptions,
    List<Notice> notices) {}
