package org.marshlight.http.report;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.ext.Provider;
import org.marshlight.Answer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.estimates.AnswerForm;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.page.Style;
import org.marshlight.http.words.Texts;

/** Writes an answer as a report to read and print. */
@Provider
@Produces(MediaType.TEXT_HTML)
public class AnswerReport extends AnswerForm {

  private final Reader reader;

  public AnswerReport(Reader reader) {
    super(MediaType.TEXT_HTML + "; charset=utf-8");
    this.reader = reader;
  }

  @Override
  @SuppressWarnings("unchecked")
  protected String text(Answer<?> answer) {
    Texts texts = reader.texts();
    Report report =
        ReportBuilder.of((Answer<PlanEstimate>) answer, reader.plan(), reader.units(), texts);
    return Templates.report(report, texts, Style.SHEET).render();
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance report(Report report, Texts t, String style);
  }
}
