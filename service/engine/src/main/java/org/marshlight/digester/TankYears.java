package org.marshlight.digester;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.ClimateYear;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Waste;

/**
 * Years of tanks that were run already, so that plans that differ only downstream of the tank, or
 * in the use of its gas, share them. The least recently used are forgotten. Serves one thread.
 */
public final class TankYears {

  /** Enough for the counterfactual runs of one plan. */
  private static final int MOST = 64;

  private final Map<Key, TankYear> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, TankYear> eldest) {
          return size() > MOST;
        }
      };

  /** The year of a tank, run if it is not known. */
  TankYear of(DigesterModel.Inputs inputs, CoefficientSet set) {
    Key key =
        new Key(
            inputs.year(),
            inputs.tank(),
            inputs.cover(),
            inputs.wastes(),
            inputs.toiletOnly(),
            inputs.warming() == null ? null : inputs.gas(),
            inputs.warming() == null ? 0 : inputs.people(),
            set);
    TankYear year = known.get(key);
    if (year == null) {
      year = TankYear.of(inputs, set);
      known.put(key, year);
    }
    return year;
  }

  /** Everything that warmth and matter of a tank rest on; its gas where surplus warms it. */
  private record Key(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      List<Waste> wastes,
      boolean toiletOnly,
      GasDesign gas,
      int people,
      CoefficientSet set) {}
}
