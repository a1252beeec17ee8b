package org.marshlight.study;

import org.marshlight.loop.Plan;

/**
 * A plan and what is to be studied about it. Fields are held to their own bounds before; what they
 * say together is judged when the study is prepared.
 *
 * @param <T> what the study gives
 */
public interface StudyRequest<T extends Record> {

  /** The plan. */
  Plan plan();

  /**
   * Makes the study ready to run: runs the plan as it is, and judges whether what is asked makes
   * sense for it and is not too much.
   *
   * @throws org.marshlight.contract.Faults if it does not, with pointers from the request's root
   */
  PreparedStudy<T> prepare();
}
