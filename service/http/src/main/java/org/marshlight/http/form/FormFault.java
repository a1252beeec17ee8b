package org.marshlight.http.form;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.http.words.Texts;

/**
 * One thing that is wrong with a form.
 *
 * @param id id of the element that shows the field; null if the form has no field for it
 * @param text what is wrong
 */
public record FormFault(String id, String text) {

  /**
   * Everything that is wrong, fields first.
   *
   * @param legs the form
   * @param faults what is wrong with its entries
   * @param texts texts in the reader's language
   */
  public static List<FormFault> all(List<Leg> legs, List<Fault> faults, Texts texts) {
    FaultWords words = new FaultWords(texts);
    List<FormFault> all =
        new ArrayList<>(
            legs.stream().flatMap(leg -> leg.items().stream()).flatMap(Item::allFaults).toList());
    faults.stream()
        .filter(fault -> FieldKind.at(fault.pointer()).filter(FormFault::shown).isEmpty())
        .forEach(fault -> all.add(new FormFault(null, words.of(fault))));
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
    return faults.stream().map(fault -> new FormFault(null, words.at(fault))).toList();
  }

  /** Groups and sections have no place of their own for what is wrong with them. */
  private static boolean shown(Item.Kind kind) {
    return kind != Item.Kind.GROUP && kind != Item.Kind.SECTION;
  }
}
