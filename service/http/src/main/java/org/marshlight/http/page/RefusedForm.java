package org.marshlight.http.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.marshlight.Problem;
import org.marshlight.http.form.FormBuilder;
import org.marshlight.http.form.FormFault;
import org.marshlight.http.form.FormState;
import org.marshlight.http.form.Leg;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.http.words.Texts;
import org.marshlight.safety.Caution;

/** Thrown where a form that a browser sent is refused; carries what its page shows. */
final class RefusedForm extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Problem problem;
  private final transient FormState state;
  private final transient String json;

  private RefusedForm(Problem problem, FormState state, String json) {
    super(problem.title());
    this.problem = problem;
    this.state = state;
    this.json = json;
  }

  /** A form that was sent field by field. */
  static RefusedForm fields(Problem problem, FormState state) {
    return new RefusedForm(problem, state, null);
  }

  /** A plan that was sent whole, as JSON. */
  static RefusedForm whole(Problem problem, String json) {
    return new RefusedForm(problem, null, json);
  }

  /** The form with the entries as they were sent, and what is wrong with them. */
  Response page(Texts texts) {
    List<Leg> legs = state == null ? List.of() : FormBuilder.legs(texts, state);
    String name = state == null ? "" : state.plan().path("name").asText("");
    String page =
        Templates.refused(
                problem.detail(),
                problem.cautions(),
                state == null
                    ? FormFault.of(problem.errors(), texts)
                    : FormFault.all(legs, problem.errors(), texts),
                legs,
                name,
                json,
                texts,
                Style.SHEET)
            .render();
    return Response.status(problem.status())
        .entity(page)
        .type(MediaType.TEXT_HTML + ";charset=UTF-8")
        .header(StandingHeaders.POLICY, StandingHeaders.WITH_SCRIPTS)
        .header(HttpHeaders.VARY, HttpHeaders.ACCEPT_LANGUAGE)
        .build();
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance refused(
        String detail,
        List<Caution> cautions,
        List<FormFault> faults,
        List<Leg> legs,
        String name,
        String json,
        Texts t,
        String style);
  }
}
