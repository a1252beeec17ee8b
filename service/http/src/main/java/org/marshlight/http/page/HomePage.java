package org.marshlight.http.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.http.catalogues.Catalogue;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.form.FormBuilder;
import org.marshlight.http.form.FormState;
import org.marshlight.http.form.Leg;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.http.problems.ProblemKind;
import org.marshlight.http.report.Report;
import org.marshlight.http.report.ReportBuilder;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitBook;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** The pages for people: the planner's page with a first plan answered, and the problems. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class HomePage {

  private final Reader reader;
  private final DemoPlan demo;

  public HomePage(Reader reader, DemoPlan demo) {
    this.reader = reader;
    this.demo = demo;
  }

  @GET
  @Operation(hidden = true)
  public Response home() {
    Texts texts = reader.texts();
    Report report = ReportBuilder.of(demo.answer(), demo.plan(), reader.units(), texts);
    TemplateInstance page =
        Templates.home(
            report,
            FormBuilder.legs(texts, FormState.of(demo.json())),
            texts,
            demo.text(),
            Catalogue.all(),
            DataBlock.of(demo.json()),
            DataBlock.of(PageTexts.of(texts)),
            DataBlock.of(UnitBook.forScripts()),
            PageTexts.headlines(),
            Style.SHEET);
    return Response.ok(page)
        .header(StandingHeaders.CAUTIONS, StandingHeaders.ids(demo.answer().cautions()))
        .header(StandingHeaders.POLICY, StandingHeaders.WITH_SCRIPTS)
        .header(HttpHeaders.VARY, HttpHeaders.ACCEPT_LANGUAGE)
        .build();
  }

  @GET
  @Path("/problems")
  @Operation(hidden = true)
  public TemplateInstance problems() {
    return Templates.problems(
        CautionBook.standard().general(),
        List.of(ProblemKind.values()),
        reader.texts(),
        Style.SHEET);
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance home(
        Report report,
        List<Leg> legs,
        Texts t,
        String sample,
        List<Catalogue> catalogues,
        String demo,
        String says,
        String units,
        List<PageTexts.Headline> headlines,
        String style);

    static native TemplateInstance problems(
        List<Caution> cautions, List<ProblemKind> kinds, Texts t, String style);
  }
}
