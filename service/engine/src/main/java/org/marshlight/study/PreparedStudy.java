package org.marshlight.study;

import java.util.List;

/**
 * A study that is legal and fits.
 *
 * @param <T> what it gives
 */
public interface PreparedStudy<T extends Record> {

  /** What it takes. */
  StudyCost cost();

  /**
   * Which field of the request sets how much it takes: the one to change for a smaller study.
   *
   * @return pointer from the request's root
   */
  String costliestField();

  /**
   * Other plans whose figures it will report, as far as they are known before it is run. Those of
   * {@link Studied#considered()} are at least these.
   */
  default List<Studied.Considered> considered() {
    return List.of();
  }

  /**
   * Runs it.
   *
   * @throws StudyStopped if nobody wants it any more
   */
  Studied<T> run(Workbench bench);
}
