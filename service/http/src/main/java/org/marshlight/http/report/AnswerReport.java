package org.marshlight.http.report;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.MessageBodyWriter;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import org.marshlight.Answer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.estimates.PlanInHand;
import org.marshlight.http.page.Style;

/** Writes an answer as a report to read and print. */
@Provider
@Produces(MediaType.TEXT_HTML)
public class AnswerReport implements MessageBodyWriter<Answer<PlanEstimate>> {

  private final PlanInHand planInHand;

  public AnswerReport(PlanInHand planInHand) {
    this.planInHand = planInHand;
  }

  @Override
  public boolean isWriteable(
      Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
    return type == Answer.class;
  }

  @Override
  public void writeTo(
      Answer<PlanEstimate> answer,
      Class<?> type,
      Type genericType,
      Annotation[] annotations,
      MediaType mediaType,
      MultivaluedMap<String, Object> headers,
      OutputStream stream)
      throws IOException {
    headers.putSingle(HttpHeaders.CONTENT_TYPE, "text/html; charset=utf-8");
    Report report = ReportBuilder.of(answer, planInHand.plan());
    stream.write(Templates.report(report, Style.SHEET).render().getBytes(StandardCharsets.UTF_8));
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance report(Report report, String style);
  }
}
