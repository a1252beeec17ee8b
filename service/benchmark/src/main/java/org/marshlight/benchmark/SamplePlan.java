package org.marshlight.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.marshlight.json.PlanDocument;
import org.marshlight.loop.Plan;

/** The plan that is measured: the hill smallholding of the sample requests. */
final class SamplePlan {

  private SamplePlan() {}

  static Plan read() {
    try (InputStream stream =
        SamplePlan.class.getResourceAsStream("/loop-hill-smallholding.json")) {
      return PlanDocument.read(stream.readAllBytes()).plan();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
