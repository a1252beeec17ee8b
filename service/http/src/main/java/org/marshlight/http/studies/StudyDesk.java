package org.marshlight.http.studies;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.marshlight.OpenStudy;
import org.marshlight.Studies;
import org.marshlight.StudyAnswer;
import org.marshlight.StudyOpening;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.http.query.Flag;
import org.marshlight.http.tables.AnswerCsv;
import org.marshlight.json.ContractJson;
import org.marshlight.json.StudyDocument;
import org.marshlight.safety.Caution;
import org.marshlight.study.StudyRequest;
import org.marshlight.study.SweepStudy;
import org.marshlight.study.Workbench;

/** Takes requests for studies and answers them in the form that the client likes best. */
@ApplicationScoped
public class StudyDesk {

  private final StudyFloor floor;
  private final int mostRunsAtOnce;

  /**
   * @param floor where studies run
   * @param mostRunsAtOnce runs of the chain that a study may take to be answered as one document;
   *     nothing is heard of such an answer until it is whole
   */
  public StudyDesk(
      StudyFloor floor,
      @ConfigProperty(name = "marshlight.studies.most-runs-of-one-document") int mostRunsAtOnce) {
    this.floor = floor;
    this.mostRunsAtOnce = mostRunsAtOnce;
  }

  /**
   * Answers a request.
   *
   * @param body the request as sent
   * @param type the record it should be
   * @param costOnly {@code true} if only the cost is asked for; null for not
   * @param context the request at hand
   */
  <T extends Record, R extends Record & StudyRequest<T>> Response answer(
      byte[] body, Class<R> type, String costOnly, RoutingContext context) {
    boolean costAlone = Flag.of("costOnly", costOnly, false);
    String form = context.request().getHeader(HttpHeaders.ACCEPT);
    StudyFloor.Place place = floor.enter(context);
    return place.work(() -> answer(body, type, costAlone, form, place));
  }

  private <T extends Record, R extends Record & StudyRequest<T>> Response answer(
      byte[] body, Class<R> type, boolean costAlone, String form, StudyFloor.Place place) {
    StudyDocument<T> document = StudyDocument.read(body, type);
    OpenStudy<T> study = open(document);
    StudyOpening opening = study.opening();
    if (costAlone) {
      return response(ContractJson.write(opening), MediaType.APPLICATION_JSON, opening.cautions());
    }
    if (form.equals(StudyLines.MEDIA_TYPE)) {
      return response(new StudyLines<>(study, place), StudyLines.MEDIA_TYPE, opening.cautions());
    }
    fitsOneDocument(study);
    StudyAnswer<T> answer = study.run(bench(place));
    if (answer.study() instanceof SweepStudy && form.equals(AnswerCsv.MEDIA_TYPE)) {
      return response(SweepTable.csv(answer), AnswerCsv.CONTENT_TYPE, answer.cautions());
    }
    return response(ContractJson.write(answer), MediaType.APPLICATION_JSON, answer.cautions());
  }

  /**
   * Refuses to answer at once what takes long: between client and service there is somebody who
   * gives a silent connection up.
   */
  private void fitsOneDocument(OpenStudy<?> study) {
    int runs = study.opening().cost().chainRuns();
    if (runs > mostRunsAtOnce) {
      throw new Faults(
          List.of(
              Fault.of(
                  "http.long-study",
                  study.costliestField(),
                  runs,
                  "at most "
                      + mostRunsAtOnce
                      + " runs of the chain, or Accept: "
                      + StudyLines.MEDIA_TYPE,
                  "runs",
                  runs,
                  "most",
                  mostRunsAtOnce,
                  "form",
                  StudyLines.MEDIA_TYPE)));
    }
  }

  private static <T extends Record> OpenStudy<T> open(StudyDocument<T> document) {
    try {
      return Studies.open(document.request(), document.planSha256());
    } catch (Faults faults) {
      throw StudyDocument.asSent(faults);
    }
  }

  private static Workbench bench(StudyFloor.Place place) {
    Workbench.Watcher watcher =
        new Workbench.Watcher() {
          @Override
          public void done(int runs, int of) {}

          @Override
          public boolean unwanted() {
            return place.isLeft();
          }
        };
    return new Workbench(place.pool(), place.threads(), watcher);
  }

  private static Response response(Object entity, String type, List<Caution> cautions) {
    return Response.ok(entity, type)
        .header(StandingHeaders.CAUTIONS, StandingHeaders.ids(cautions))
        .header(HttpHeaders.VARY, HttpHeaders.ACCEPT)
        .build();
  }
}
