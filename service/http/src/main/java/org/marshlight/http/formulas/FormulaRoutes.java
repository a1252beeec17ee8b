package org.marshlight.http.formulas;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.marshlight.FormulaAnswer;
import org.marshlight.contract.Faults;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.FormulaEntry;
import org.marshlight.http.problems.Refusal;
import org.marshlight.json.JsonDocument;
import org.marshlight.json.PartlyRead;
import org.marshlight.json.RecordReader;

/** Works single formulas of the book, so that each step of an estimate can be done again. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "formulas")
public class FormulaRoutes {

  @POST
  @Path("/formulas/{id}")
  @Operation(operationId = "workFormula", summary = "What a formula gives for stated inputs")
  public FormulaAnswer work(@RestPath String id, byte[] body) {
    FormulaBook book = FormulaBook.standard();
    FormulaEntry formula =
        book.find(id).orElseThrow(() -> Refusal.unknownId("formulas", id, book.ids()));
    PartlyRead<FormulaRequest> read =
        RecordReader.readWhatCanBe(JsonDocument.parse(body), FormulaRequest.class);
    Map<String, Double> inputs =
        read.record() == null || read.record().inputs() == null ? Map.of() : read.record().inputs();
    if (!read.faults().isEmpty()) {
      throw new Faults(Faults.joined(read.faults(), FormulaBook.faults(formula, inputs)));
    }
    return FormulaAnswer.of(formula, inputs);
  }
}
