package org.marshlight.http.studies;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.marshlight.OpenStudy;
import org.marshlight.Studies;
import org.marshlight.StudyAnswer;
import org.marshlight.StudyOpening;
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

  public StudyDesk(StudyFloor floor) {
    this.floor = floor;
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
    StudyFloor.Place place = floor.enter(context);
    StudyDocument<T> document = StudyDocument.read(body, type);
    OpenStudy<T> study = open(document);
    StudyOpening opening = study.opening();
    String form = context.request().getHeader(HttpHeaders.ACCEPT);
    if (costAlone) {
      return response(ContractJson.write(opening), MediaType.APPLICATION_JSON, opening.cautions());
    }
    if (form.equals(StudyLines.MEDIA_TYPE)) {
      return response(new StudyLines<>(study, place), StudyLines.MEDIA_TYPE, opening.cautions());
    }
    StudyAnswer<T> answer = study.run(bench(place));
    if (answer.study() instanceof SweepStudy && form.equals(AnswerCsv.MEDIA_TYPE)) {
      return response(SweepTable.csv(answer), AnswerCsv.CONTENT_TYPE, answer.cautions());
    }
    return response(ContractJson.write(answer), MediaType.APPLICATION_JSON, answer.cautions());
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
