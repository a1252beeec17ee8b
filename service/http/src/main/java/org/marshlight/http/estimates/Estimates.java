package org.marshlight.http.estimates;

import jakarta.enterprise.context.ApplicationScoped;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.limits.Admission;
import org.marshlight.http.query.Flag;
import org.marshlight.json.PlanDocument;
import org.marshlight.loop.Stage;

/** Reads plans and has the engine estimate them, as many at a time as the service can bear. */
@ApplicationScoped
public class Estimates {

  private final Admission admission;
  private final Reader reader;

  public Estimates(Admission admission, Reader reader) {
    this.admission = admission;
    this.reader = reader;
  }

  /**
   * The estimate of one stage, or of all.
   *
   * @param stage what is asked for
   * @param body the plan as sent
   * @param working {@code true} if the steps of each stage are wanted; null for not
   */
  public Answer<PlanEstimate> of(Stage stage, byte[] body, String working) {
    boolean steps = Flag.of("working", working, false);
    reader.units();
    return admission.admit(
        () -> {
          PlanDocument document = PlanDocument.read(body, stage);
          reader.take(document.plan());
          return Marshlight.estimate(
              new Marshlight.Request(document.plan(), stage, steps, document.sha256()));
        });
  }
}
