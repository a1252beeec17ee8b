package org.marshlight.http.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.Meta;
import org.marshlight.http.catalogues.Catalogue;
import org.marshlight.http.contract.Sample;
import org.marshlight.http.problems.ProblemKind;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** The pages for people: what this is with a sample to try, and what each problem means. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class HomePage {

  @GET
  @Operation(hidden = true)
  public TemplateInstance home() {
    return Templates.home(
        CautionBook.standard().general(),
        Sample.all().get(0).body(),
        Catalogue.all(),
        Meta.VERSION,
        Style.SHEET);
  }

  @GET
  @Path("/problems")
  @Operation(hidden = true)
  public TemplateInstance problems() {
    return Templates.problems(
        CautionBook.standard().general(), List.of(ProblemKind.values()), Style.SHEET);
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance home(
        List<Caution> cautions,
        String sample,
        List<Catalogue> catalogues,
        String version,
        String style);

    static native TemplateInstance problems(
        List<Caution> cautions, List<ProblemKind> kinds, String style);
  }
}
