package org.marshlight.http.studies;

import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.jboss.logging.Logger;
import org.marshlight.OpenStudy;
import org.marshlight.http.problems.Problems;
import org.marshlight.json.ContractJson;
import org.marshlight.study.StudyStopped;
import org.marshlight.study.Workbench;

/**
 * A study told line by line, each a JSON document: first what it takes and what can hurt, then how
 * far it is, last the answer, or the problem that kept it from being one.
 */
final class StudyLines<T extends Record> implements StreamingOutput, Workbench.Watcher {

  /** Media type of documents line by line. */
  static final String MEDIA_TYPE = "application/x-ndjson";

  private static final Logger LOG = Logger.getLogger(StudyLines.class);
  private static final int FAILED = 500;

  private final OpenStudy<T> study;
  private final StudyFloor.Place place;
  private OutputStream stream;
  private int told;

  StudyLines(OpenStudy<T> study, StudyFloor.Place place) {
    this.study = study;
    this.place = place;
  }

  @Override
  public void write(OutputStream output) {
    stream = output;
    place.work(this::tell);
  }

  private Void tell() {
    try {
      line(study.opening());
      line(study.run(new Workbench(place.pool(), place.threads(), this)));
    } catch (StudyStopped | UncheckedIOException gone) {
      LOG.debug("A client went away before its study was done");
    } catch (RuntimeException failure) {
      LOG.error("A study failed", failure);
      line(Problems.ofStatus(FAILED));
    }
    return null;
  }

  @Override
  public void done(int runs, int of) {
    int percent = (int) (100L * runs / of);
    if (percent != told) {
      told = percent;
      line(new StudyProgress(runs, of));
    }
  }

  /** A line now and then keeps those between the service and its client from giving up. */
  @Override
  public void waiting(int runs, int of) {
    line(new StudyProgress(runs, of));
  }

  @Override
  public boolean unwanted() {
    return place.isLeft();
  }

  private void line(Record document) {
    try {
      stream.write(ContractJson.write(document));
      stream.write('\n');
      stream.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
