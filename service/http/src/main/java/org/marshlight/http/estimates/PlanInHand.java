package org.marshlight.http.estimates;

import jakarta.enterprise.context.RequestScoped;
import org.marshlight.loop.Plan;

/** The plan that the request at hand asks about, for those forms of an answer that show it. */
@RequestScoped
public class PlanInHand {

  private Plan plan;

  /** The plan; null until one was read. */
  public Plan plan() {
    return plan;
  }

  void take(Plan read) {
    plan = read;
  }
}
