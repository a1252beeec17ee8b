package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** What the public rule of sizing counts for each person. */
public record SepticRule(
    @Coefficient("digester.rule-sludge-all") double sludgeAllLPerYear,
    @Coefficient("digester.rule-sludge-toilet") double sludgeToiletLPerYear,
    @Coefficient("digester.rule-cold-factor") double coldFactor) {

  /** Volume that the rule asks for, m3. */
  double volumeM3(int people, double wastewaterLPersonDay, int years, boolean toiletOnly) {
    double sludge = toiletOnly ? sludgeToiletLPerYear : sludgeAllLPerYear;
    return (SepticSizing.retentionAllowanceL(people, wastewaterLPersonDay)
            + SepticSizing.sludgeAllowanceL(people, years, coldFactor, sludge))
        / 1000;
  }
}
