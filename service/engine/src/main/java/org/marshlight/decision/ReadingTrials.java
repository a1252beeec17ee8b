package org.marshlight.decision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.decision.BuildOrderStudy.Reading;
import org.marshlight.decision.BuildOrderStudy.Turn;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;
import org.marshlight.wetland.BedDesign;

/**
 * Readings that could change a verdict: the plan is judged again with what each would tell at
 * either end of its range, one trial for each.
 */
public final class ReadingTrials {

  private final Plan plan;
  private final Comparisons basis;
  private final List<Verdict> now;

  private final List<Trial> trials = new ArrayList<>();

  ReadingTrials(Plan plan, Comparisons basis, List<Verdict> now) {
    this.plan = plan;
    this.basis = basis;
    this.now = now;
    candidates().forEach(this::gather);
  }

  /** A coefficient at one end of its range, by the name of the reading that would tell it. */
  private record Trial(String reading, CoefficientRow row, double value) {}

  private void gather(String reading, List<String> coefficients) {
    for (String coefficient : coefficients) {
      CoefficientRow row = basis.set().book().find(coefficient).orElseThrow();
      if (!basis.set().isOverridden(coefficient)) {
        trials.add(new Trial(reading, row, row.low()));
        trials.add(new Trial(reading, row, row.high()));
      }
    }
  }

  /** How many trials there are. */
  public int count() {
    return trials.size();
  }

  /**
   * The verdicts that one trial changes; may be asked from several threads.
   *
   * @param trial its number, from 0
   */
  public List<Turn> turns(int trial) {
    CoefficientRow row = trials.get(trial).row();
    double value = trials.get(trial).value();
    List<Turn> turns = new ArrayList<>();
    for (Verdict then : judged(Map.of(row.id(), value))) {
      for (Verdict before : now) {
        if (same(before, then) && before.answer() != then.answer()) {
          turns.add(
              new Turn(
                  then.component(),
                  then.bed(),
                  row.id(),
                  row.unit(),
                  value,
                  before.answer(),
                  then.answer()));
        }
      }
    }
    return turns;
  }

  /**
   * Readings that change at least one verdict, in a fixed order.
   *
   * @param turns what each trial changes
   */
  public List<Reading> readings(List<List<Turn>> turns) {
    Map<String, List<Turn>> changed = new LinkedHashMap<>();
    for (int i = 0; i < trials.size(); i++) {
      if (!turns.get(i).isEmpty()) {
        changed
            .computeIfAbsent(trials.get(i).reading(), name -> new ArrayList<>())
            .addAll(turns.get(i));
      }
    }
    List<Reading> readings = new ArrayList<>();
    changed.forEach(
        (name, all) -> {
          String code = "decision.reading-" + name;
          readings.add(new Reading(code, Sentences.text(code, Params.of()), List.copyOf(all)));
        });
    return List.copyOf(readings);
  }

  /** What each reading would tell, by the name of the reading. */
  private Map<String, List<String>> candidates() {
    Map<String, List<String>> candidates = new LinkedHashMap<>();
    if (plan.people() != null) {
      candidates.put("water", List.of("personal-streams.greywater.water"));
      candidates.put("inflow", List.of("digester.inflow-above-mains"));
    }
    List<String> feeds = new ArrayList<>();
    List<String> decay = new ArrayList<>();
    for (FeedDesign feed : plan.feeds() == null ? List.<FeedDesign>of() : plan.feeds()) {
      feeds.add("feeds." + feed.feed() + ".total-solids");
      decay.add("feeds." + feed.feed() + ".degradable-share");
    }
    candidates.put("feeds", feeds.stream().distinct().toList());
    candidates.put("hydrolysis", decay.stream().distinct().toList());
    if (plan.gas() != null) {
      candidates.put("burner", List.of("decision.burner-efficiency"));
      candidates.put("leak", List.of("digester.leak-share"));
      candidates.put("life", List.of("economy.failing-share"));
    }
    if (plan.beds() != null && !plan.beds().isEmpty()) {
      candidates.put("outflow", List.of("digester.bod5-of-degradable"));
    }
    if (plan.fuel() != null && plan.beds() != null) {
      candidates.put(
          "starch",
          plan.beds().stream()
              .map(BedDesign::plant)
              .filter(java.util.Objects::nonNull)
              .map(plant -> "plants." + plant + ".organ-starch")
              .filter(id -> basis.set().book().find(id).isPresent())
              .distinct()
              .toList());
    }
    return candidates;
  }

  private static boolean same(Verdict one, Verdict other) {
    return one.component() == other.component() && java.util.Objects.equals(one.bed(), other.bed());
  }

  /** The verdicts with a coefficient elsewhere; none of those read here moves the weather. */
  private List<Verdict> judged(Map<String, Double> override) {
    CoefficientSet set = basis.set().with(override);
    TankYears tanks = new TankYears();
    return VerdictModel.verdicts(
        plan, LoopModel.run(plan, Stage.LOOP, basis.site(), set, tanks), basis.site(), set, tanks);
  }
}
