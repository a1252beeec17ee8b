package org.marshlight.json;

import org.marshlight.contract.Faults;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.Stage;

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
    return read(body, Stage.LOOP);
  }

  /**
   * Reads a plan that is asked for one stage. Whether the plan is legal is judged only if something
   * could not be read, so that whoever sent it learns of everything at once.
   *
   * @param body bytes in UTF-8
   * @param stage the stage asked for
   * @throws MalformedJson if they are no JSON document
   * @throws org.marshlight.contract.Faults if the document is not a plan, with every fault of form,
   *     of range and of rules that can be found in what was read
   */
  public static PlanDocument read(byte[] body, Stage stage) {
    JsonDocument document = JsonDocument.parse(body);
    PartlyRead<Plan> read = RecordReader.readWhatCanBe(document, Plan.class);
    if (!read.faults().isEmpty()) {
      throw new Faults(PlanCheck.faults(read.record(), stage, read.faults()));
    }
    return new PlanDocument(read.record(), CanonicalHash.sha256(document.text()));
  }
}
