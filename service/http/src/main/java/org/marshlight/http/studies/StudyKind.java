package org.marshlight.http.studies;

import java.util.Arrays;
import java.util.Optional;
import org.marshlight.decision.BreakEvenStudy;
import org.marshlight.decision.BuildOrderStudy;
import org.marshlight.json.PatchedComparison;
import org.marshlight.study.BreakEvenRequest;
import org.marshlight.study.BuildOrderRequest;
import org.marshlight.study.CalibrationRequest;
import org.marshlight.study.CalibrationStudy;
import org.marshlight.study.ComparisonStudy;
import org.marshlight.study.SensitivityRequest;
import org.marshlight.study.SensitivityStudy;
import org.marshlight.study.SizingRequest;
import org.marshlight.study.SizingStudy;
import org.marshlight.study.SweepRequest;
import org.marshlight.study.SweepStudy;
import org.marshlight.study.UncertaintyRequest;
import org.marshlight.study.UncertaintyStudy;

/** The studies, with what is sent and what is answered. */
public enum StudyKind {
  UNCERTAINTY("uncertainty", UncertaintyRequest.class, UncertaintyStudy.class),
  SENSITIVITY("sensitivity", SensitivityRequest.class, SensitivityStudy.class),
  SIZING("sizing", SizingRequest.class, SizingStudy.class),
  COMPARISON("comparison", PatchedComparison.class, ComparisonStudy.class),
  SWEEP("sweep", SweepRequest.class, SweepStudy.class),
  CALIBRATION("calibration", CalibrationRequest.class, CalibrationStudy.class),
  BREAK_EVEN("break-even", BreakEvenRequest.class, BreakEvenStudy.class),
  BUILD_ORDER("build-order", BuildOrderRequest.class, BuildOrderStudy.class);

  private static final String ROOT = "/v1/studies/";

  private final String path;
  private final Class<? extends Record> sent;
  private final Class<? extends Record> answered;

  StudyKind(String name, Class<? extends Record> sent, Class<? extends Record> answered) {
    this.path = ROOT + name;
    this.sent = sent;
    this.answered = answered;
  }

  /** The study that a path asks for. */
  public static Optional<StudyKind> at(String path) {
    return Arrays.stream(values()).filter(kind -> kind.path.equals(path)).findFirst();
  }

  /** The record of the body. */
  public Class<? extends Record> sent() {
    return sent;
  }

  /** The record under {@code study}. */
  public Class<? extends Record> answered() {
    return answered;
  }
}
