package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.marshlight.contract.Fault;
import org.marshlight.statistics.RankCorrelation;

/** The stated correlations of a study's uncertain numbers. */
final class Ties {

  private static final Ties NONE = new Ties(null);

  private final RankCorrelation correlation;

  private Ties(RankCorrelation correlation) {
    this.correlation = correlation;
  }

  /**
   * The ties of some stated correlations.
   *
   * @param stated pairs, none if null
   * @param space the uncertain numbers
   * @param faults receives pairs that are none of these, or that contradict each other
   */
  static Ties of(List<Correlated> stated, DrawSpace space, List<Fault> faults) {
    if (stated == null || stated.isEmpty()) {
      return NONE;
    }
    int before = faults.size();
    TreeSet<Integer> tied = new TreeSet<>();
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < stated.size(); i++) {
      int[] pair = {
        place(stated.get(i).first(), space, "/correlations/" + i + "/first", faults),
        place(stated.get(i).second(), space, "/correlations/" + i + "/second", faults)
      };
      if (pair[0] == pair[1] && pair[0] >= 0) {
        faults.add(
            Fault.of(
                "study.tied-to-itself",
                "/correlations/" + i + "/second",
                stated.get(i).second(),
                "another number"));
      }
      pairs.add(pair);
      tied.add(pair[0]);
      tied.add(pair[1]);
    }
    return faults.size() > before ? NONE : tied(stated, pairs, tied, faults);
  }

  private static Ties tied(
      List<Correlated> stated, List<int[]> pairs, TreeSet<Integer> tied, List<Fault> faults) {
    int[] places = tied.stream().mapToInt(Integer::intValue).toArray();
    double[][] ranks = new double[places.length][places.length];
    for (int i = 0; i < places.length; i++) {
      ranks[i][i] = 1;
    }
    for (int i = 0; i < pairs.size(); i++) {
      int first = tied.headSet(pairs.get(i)[0]).size();
      int second = tied.headSet(pairs.get(i)[1]).size();
      ranks[first][second] = stated.get(i).rankCorrelation();
      ranks[second][first] = stated.get(i).rankCorrelation();
    }
    try {
      return new Ties(RankCorrelation.of(places, ranks));
    } catch (IllegalArgumentException e) {
      faults.add(
          Fault.of(
              "study.correlations-contradict",
              "/correlations",
              null,
              "correlations that three or more numbers can have together"));
      return NONE;
    }
  }

  private static int place(String id, DrawSpace space, String at, List<Fault> faults) {
    int place = space.place(id);
    if (place < 0) {
      faults.add(
          Fault.of(
              "study.not-uncertain",
              at,
              id,
              "a coefficient that the plan uses and did not set, or a pointer under vary"));
    }
    return place;
  }

  /** Ties the coordinates of a point, in place. */
  void tie(double[] point) {
    if (correlation != null) {
      correlation.tie(point);
    }
  }
}
