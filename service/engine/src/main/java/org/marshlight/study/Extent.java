package org.marshlight.study;

import java.util.List;
import java.util.Objects;
import org.marshlight.loop.Stage;

/**
 * How far the chain must be run for some figures. What lies downstream of all of them can neither
 * change them nor be worth its time.
 *
 * @param stage the stage as far as which plans are run
 * @param outcome the plan as it is, run so far
 */
record Extent(Stage stage, Outcome outcome) {

  /** Stages that run less than the whole chain, the shortest first; plants grow with their beds. */
  private static final List<Stage> SHORTER =
      List.of(Stage.DIGESTER, Stage.WETLAND, Stage.ETHANOL, Stage.COMPOST);

  /** The shortest run that has every figure as the whole chain has it. */
  static Extent of(BaseRun base, Figures figures) {
    if (!figures.whole()) {
      for (Stage stage : SHORTER) {
        Outcome outcome = Outcome.of(base.plan(), base.set(), base.site(), stage);
        if (figures.list().stream().allMatch(figure -> same(figure, outcome, base.outcome()))) {
          return new Extent(stage, outcome);
        }
      }
    }
    return new Extent(Stage.LOOP, base.outcome());
  }

  private static boolean same(Figure figure, Outcome shorter, Outcome whole) {
    return Objects.equals(shorter.part(figure.path().get(0)), whole.part(figure.path().get(0)));
  }
}
