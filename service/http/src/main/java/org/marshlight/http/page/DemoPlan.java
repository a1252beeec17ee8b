package org.marshlight.http.page;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.contract.Sample;
import org.marshlight.json.JsonDocument;
import org.marshlight.json.PlanDocument;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;

/** The invented plan that the page shows at first, estimated once. */
@ApplicationScoped
public class DemoPlan {

  private final String text = Sample.all().get(0).body();
  private final PlanDocument document = PlanDocument.read(text.getBytes(StandardCharsets.UTF_8));
  private Answer<PlanEstimate> answer;

  /** The plan as a person would write it. */
  public String text() {
    return text;
  }

  /** The plan as a tree. */
  public JsonNode json() {
    return JsonDocument.parse(text.getBytes(StandardCharsets.UTF_8)).tree();
  }

  /** The plan. */
  public Plan plan() {
    return document.plan();
  }

  /** What it gives. */
  public synchronized Answer<PlanEstimate> answer() {
    if (answer == null) {
      answer =
          Marshlight.estimate(
              new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
    }
    return answer;
  }
}
