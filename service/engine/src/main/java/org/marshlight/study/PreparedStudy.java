package org.marshlight.study;

/**
 * A study that is legal and fits.
 *
 * @param <T> what it gives
 */
public interface PreparedStudy<T extends Record> {

  /** What it takes. */
  StudyCost cost();

  /**
   * Runs it.
   *
   * @throws StudyStopped if nobody wants it any more
   */
  Studied<T> run(Workbench bench);
}
