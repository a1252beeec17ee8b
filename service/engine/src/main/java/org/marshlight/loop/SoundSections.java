package org.marshlight.loop;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.RecordShape;

/** What of a plan rules that join several fields can be asked about. */
final class SoundSections {

  private static final String COEFFICIENTS = "coefficients";

  private SoundSections() {}

  /**
   * The plan without each section in which a field alone is wrong, and without wrong coefficients.
   *
   * @param plan a plan
   * @param faults what is wrong with single fields, by pointers into the plan
   */
  static Plan of(Plan plan, List<Fault> faults) {
    Set<String> sections = new HashSet<>();
    Set<String> coefficients = new HashSet<>();
    for (Fault fault : faults) {
      List<String> path = Pointer.names(fault.pointer());
      if (path.size() > 1 && path.get(0).equals(COEFFICIENTS)) {
        coefficients.add(path.get(1));
      } else if (!path.isEmpty()) {
        sections.add(path.get(0));
      }
    }
    Plan sound = plan;
    for (String section : RecordShape.of(Plan.class).names()) {
      if (sections.contains(section)) {
        sound = RecordShape.changed(sound, section, null);
      }
    }
    return coefficients.isEmpty() || sound.coefficients() == null
        ? sound
        : RecordShape.changed(sound, COEFFICIENTS, without(sound.coefficients(), coefficients));
  }

  private static Map<String, Double> without(Map<String, Double> all, Set<String> ids) {
    Map<String, Double> rest = new TreeMap<>(all);
    rest.keySet().removeAll(ids);
    return rest;
  }
}
