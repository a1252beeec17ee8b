package org.marshlight.http.contract;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.marshlight.Answer;
import org.marshlight.CatalogueAnswer;
import org.marshlight.FormulaAnswer;
import org.marshlight.StudyAnswer;
import org.marshlight.StudyOpening;
import org.marshlight.WeatherAnswer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.catalogues.Catalogue;
import org.marshlight.http.formulas.FormulaRequest;
import org.marshlight.http.studies.StudyKind;
import org.marshlight.loop.Plan;

/** Completes the operations of one document and keeps what they share. */
final class Operations {

  private final RecordSchemas schemas = new RecordSchemas();
  private final Schema plan = schemas.sent(Plan.class);
  private final Schema formulaRequest = schemas.sent(FormulaRequest.class);
  private final Map<StudyKind, Schema> studyRequests = studyRequests();
  private final Responses responses = new Responses(schemas);

  /** Schemas, responses and headers that the operations refer to. */
  Components shared() {
    return OASFactory.createComponents()
        .schemas(schemas.components())
        .responses(responses.components())
        .headers(responses.headers());
  }

  /** An estimate of a plan. */
  void estimate(String path, Operation operation) {
    Schema answer = schemas.answered(Answer.class, PlanEstimate.class, "EstimateAnswer");
    operation
        .requestBody(Requests.body(path, plan))
        .parameters(List.of(Requests.working(), Requests.units()))
        .responses(responses.estimate(answer));
  }

  private Map<StudyKind, Schema> studyRequests() {
    Map<StudyKind, Schema> requests = new EnumMap<>(StudyKind.class);
    for (StudyKind kind : StudyKind.values()) {
      requests.put(kind, schemas.sent(kind.sent()));
    }
    return requests;
  }

  /** A study of a plan. */
  void study(String path, Operation operation) {
    StudyKind kind = StudyKind.at(path).orElseThrow();
    String name = kind.answered().getSimpleName() + "Answer";
    operation
        .requestBody(Requests.body(path, studyRequests.get(kind)))
        .parameters(List.of(Requests.costOnly()))
        .responses(
            responses.study(
                schemas.answered(StudyAnswer.class, kind.answered(), name),
                schemas.answered(StudyOpening.class),
                kind == StudyKind.SWEEP));
  }

  /** One formula worked. */
  void formula(String path, Operation operation) {
    operation
        .requestBody(Requests.body(path, formulaRequest))
        .parameters(List.of(Requests.id("formulas")))
        .responses(
            responses.json(schemas.answered(FormulaAnswer.class), 400, 404, 406, 413, 415, 500));
  }

  /** A weather file read. */
  void weatherFile(Operation operation) {
    operation
        .requestBody(Requests.weatherFile())
        .parameters(List.of(Requests.hours()))
        .responses(
            responses.json(schemas.answered(WeatherAnswer.class), 400, 406, 413, 415, 500, 503));
  }

  /** All items of a catalogue. */
  Operation list(Catalogue catalogue) {
    return OASFactory.createOperation()
        .operationId("list" + capital(catalogue))
        .summary(catalogue.about())
        .addParameter(Requests.ifNoneMatch())
        .responses(responses.catalogue(answer(catalogue), false));
  }

  /** One item of a catalogue. */
  Operation one(Catalogue catalogue) {
    return OASFactory.createOperation()
        .operationId("findIn" + capital(catalogue))
        .summary("One of the " + catalogue.name())
        .addParameter(Requests.id(catalogue.name()))
        .addParameter(Requests.ifNoneMatch())
        .responses(responses.catalogue(answer(catalogue), true));
  }

  private Schema answer(Catalogue catalogue) {
    return schemas.answered(
        CatalogueAnswer.class, catalogue.itemType(), capital(catalogue) + "Answer");
  }

  private static String capital(Catalogue catalogue) {
    return catalogue.name().substring(0, 1).toUpperCase(Locale.ROOT)
        + catalogue.name().substring(1);
  }
}
