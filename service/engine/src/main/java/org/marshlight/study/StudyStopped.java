package org.marshlight.study;

/** Thrown where a study is given up because nobody waits for it any more. */
public final class StudyStopped extends RuntimeException {

  private static final long serialVersionUID = 1L;

  StudyStopped() {
    super("nobody waits for this study any more", null, false, false);
  }
}
