package org.marshlight.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.marshlight.Answer;
import org.marshlight.Problem;
import org.marshlight.StudyAnswer;
import org.marshlight.StudyOpening;
import org.marshlight.climate.BuiltInClimate;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Plan;
import org.marshlight.study.CalibrationRequest;
import org.marshlight.study.CalibrationStudy;
import org.marshlight.study.ComparisonRequest;
import org.marshlight.study.ComparisonStudy;
import org.marshlight.study.SensitivityRequest;
import org.marshlight.study.SensitivityStudy;
import org.marshlight.study.SizingRequest;
import org.marshlight.study.SizingStudy;
import org.marshlight.study.SweepRequest;
import org.marshlight.study.SweepStudy;
import org.marshlight.study.UncertaintyRequest;
import org.marshlight.study.UncertaintyStudy;

/** A numeric name of the contract ends in its unit, and the unit is the one of its annotation. */
class UnitSuffixTest {

  private static final Map<String, String> UNITS = new LinkedHashMap<>();

  static {
    String[][] pairs = {
      {"KWhM2Day", "kW.h/(m2.d)"},
      {"PerKWh", "1/(kW.h)"},
      {"PerM2", "1/m2"},
      {"KWhPerYear", "kW.h/a"},
      {"KWhPerHour", "kW.h/h"},
      {"HoursPerYear", "h/a"},
      {"KWh", "kW.h"},
      {"M2KW", "m2.K/W"},
      {"WK", "W/K"},
      {"M2", "m2"},
      {"M3", "m3"},
      {"Nm3", "m3"},
      {"M3Day", "m3/d"},
      {"M3PerYear", "m3/a"},
      {"MDay", "m/d"},
      {"MYear", "m/a"},
      {"DSM", "dS/m"},
      {"M", "m"},
      {"Mm", "mm"},
      {"MmDay", "mm/d"},
      {"CmDay", "cm/d"},
      {"MS", "m/s"},
      {"KgM3Day", "kg/(m3.d)"},
      {"GM2Day", "g/(m2.d)"},
      {"GM2Year", "g/(m2.a)"},
      {"KgM2", "kg/m2"},
      {"KgM3", "kg/m3"},
      {"KgPerDay", "kg/d"},
      {"KgPerYear", "kg/a"},
      {"KgPerTonne", "kg/t"},
      {"KgKg", "kg/kg"},
      {"GKg", "g/kg"},
      {"M3Kg", "m3/kg"},
      {"KgHa", "kg/har"},
      {"KgMonth", "kg/mo"},
      {"Kg", "kg"},
      {"GPerPersonDay", "g/d"},
      {"MgL", "mg/L"},
      {"LPerDay", "L/d"},
      {"LM2Day", "L/(m2.d)"},
      {"L", "L"},
      {"MJL", "MJ/L"},
      {"MJKg", "MJ/kg"},
      {"MJM2Day", "MJ/(m2.d)"},
      {"C", "Cel"},
      {"K", "K"},
      {"Deg", "deg"},
      {"KPa", "kPa"},
      {"Percent", "%"},
      {"PercentVol", "%{vol}"},
      {"Ppm", "[ppm]"},
      {"Per100ML", "{CFU}/dL"},
      {"Years", "a"},
      {"Days", "d"},
      {"DaysPerYear", "d/a"},
      {"Hours", "h"},
      {"HoursPerDay", "h/d"},
      {"PerDay", "1/d"},
      {"PerYear", "a-1"},
      {"Fraction", "1"},
      {"Usd", "{USD}"}
    };
    for (String[] pair : pairs) {
      UNITS.put(pair[0], pair[1]);
    }
  }

  @Test
  void everyNameEndsInItsUnit() {
    List<String> wrong = new ArrayList<>();
    Set<Class<?>> seen = new HashSet<>();
    for (Class<? extends Record> root :
        List.of(
            Plan.class,
            PlanEstimate.class,
            Answer.class,
            Problem.class,
            BuiltInClimate.class,
            StudyAnswer.class,
            StudyOpening.class,
            UncertaintyRequest.class,
            UncertaintyStudy.class,
            SensitivityRequest.class,
            SensitivityStudy.class,
            SizingRequest.class,
            SizingStudy.class,
            ComparisonRequest.class,
            ComparisonStudy.class,
            SweepRequest.class,
            SweepStudy.class,
            CalibrationRequest.class,
            CalibrationStudy.class)) {
      check(root, false, seen, wrong);
    }
    assertThat(wrong).isEmpty();
  }

  private static void check(
      Class<? extends Record> type, boolean unitOutside, Set<Class<?>> seen, List<String> wrong) {
    if (!seen.add(type)) {
      return;
    }
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      boolean outside = suffix(field.name()) != null;
      if (field.elementType().isRecord()) {
        check(field.elementType().asSubclass(Record.class), outside, seen, wrong);
      }
      String unit = field.quantity().map(Quantity::unit).orElse(Quantity.UNIT_BESIDE);
      if (unit.equals(Quantity.UNIT_BESIDE) || unitOutside) {
        continue;
      }
      String suffix = suffix(field.name());
      String expected = suffix == null ? "1" : UNITS.get(suffix);
      if (!expected.equals(unit)) {
        wrong.add(type.getSimpleName() + "." + field.name() + " is in " + unit);
      }
    }
  }

  /** The longest unit that a name ends in, after a lower-case letter or digit; null if none. */
  private static String suffix(String name) {
    String capital = Character.toUpperCase(name.charAt(0)) + name.substring(1);
    if (UNITS.containsKey(capital)) {
      return capital;
    }
    return UNITS.keySet().stream()
        .filter(name::endsWith)
        .filter(s -> name.length() > s.length())
        .filter(s -> !Character.isUpperCase(name.charAt(name.length() - s.length() - 1)))
        .max(Comparator.comparingInt(String::length))
        .orElse(null);
  }
}
