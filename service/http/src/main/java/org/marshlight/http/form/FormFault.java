package org.marshlight.http.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.marshlight.contract.Fault;
import org.marshlight.http.words.Texts;

/**
 * One thing that is wrong with a form.
 *
 * @param id id of the element that shows the field; null if the form has no field for it
 * @param pointer what the fault names in the plan
 * @param text what is wrong
 */
public record FormFault(String id, String pointer, String text) {

  /**
   * Everything that is wrong, fields first.
   *
   * @param legs the form
   * @param faults what is wrong with its entries
   * @param texts texts in the reader's language
   */
  public static List<FormFault> all(List<Leg> legs, List<Fault> faults, Texts texts) {
    List<FormFault> all =
        new ArrayList<>(
            legs.stream().flatMap(leg -> leg.items().stream()).flatMap(Item::allFaults).toList());
    Set<String> shown = all.stream().map(FormFault::pointer).collect(Collectors.toSet());
    all.addAll(
        of(faults.stream().filter(fault -> !shown.contains(fault.pointer())).toList(), texts));
    return List.copyOf(all);
  }

  /**
   * The same where no form is shown.
   *
   * @param faults what is wrong with a plan
   * @param texts texts in the reader's language
   */
  public static List<FormFault> of(List<Fault> faults, Texts texts) {
    FaultWords words = new FaultWords(texts);
    return faults.stream()
        .map(fault -> new FormFault(null, fault.pointer(), words.at(fault)))
        .toList();
  }
}
