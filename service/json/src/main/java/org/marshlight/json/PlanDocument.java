package org.marshlight.json;

import org.marshlight.loop.Plan;

/**
 * A plan as it was sent.
 *
 * @param plan the plan
 * @param sha256 hash of the document in the canonical form of RFC 8785
 */
public record PlanDocument(Plan plan, String sha256) {

  /**
   * Reads a plan.
   *
   * @param body bytes in UTF-8
   * @throws MalformedJson if they are no JSON document
   * @throws org.marshlight.contract.Faults if the document is not a plan, with every fault
   */
  public static PlanDocument read(byte[] body) {
    JsonDocument document = JsonDocument.parse(body);
    Plan plan = RecordReader.read(document, Plan.class);
    return new PlanDocument(plan, CanonicalHash.sha256(document.text()));
  }
}
