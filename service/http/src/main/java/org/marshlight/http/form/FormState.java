package org.marshlight.http.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import org.marshlight.contract.Fault;

/**
 * What a form shows.
 *
 * @param plan the entries, also those of sections that the plan does not have
 * @param absent pointers of the sections that are not ticked although they have entries
 * @param faults what is wrong with the entries
 */
public record FormState(JsonNode plan, Set<String> absent, List<Fault> faults) {

  /** A plan without faults. */
  public static FormState of(JsonNode plan) {
    return new FormState(plan, Set.of(), List.of());
  }
}
