package org.marshlight.http.report;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.ext.Provider;
import org.marshlight.Answer;
import org.marshlight.http.estimates.AnswerForm;
import org.marshlight.http.estimates.PlanInHand;
import org.marshlight.http.page.Style;

/** Writes an answer as a report to read and print. */
@Provider
@Produces(MediaType.TEXT_HTML)
public class AnswerReport extends AnswerForm {

  private final PlanInHand planInHand;

  public AnswerReport(PlanInHand planInHand) {
    super(MediaType.TEXT_HTML + "; charset=utf-8");
    this.planInHand = planInHand;
  }

  @Override
  protected String text(Answer<?> answer) {
    Report report = ReportBuilder.of(answer, planInHand.plan());
    return Templates.report(report, Style.SHEET).render();
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance report(Report report, String style);
  }
}
