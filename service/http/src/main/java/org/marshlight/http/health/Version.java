package org.marshlight.http.health;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.marshlight.Meta;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.http.limits.Admission;

/** Ready once the books are read; tells which version answers. */
@Readiness
@ApplicationScoped
public class Version implements HealthCheck {

  private final Admission admission;

  public Version(Admission admission) {
    this.admission = admission;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("marshlight")
        .withData("version", Meta.VERSION)
        .withData("formulas", FormulaBook.standard().entries().size())
        .withData("coefficients", CoefficientBook.standard().rows().size())
        .withData("freePlaces", admission.free())
        .up()
        .build();
  }
}
