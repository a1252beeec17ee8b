package org.marshlight.evidence;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Says what an argument of a {@link Formula} is and where the formula holds. */
@Documented
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
public @interface Argument {

  /** Symbol, as in the expression. */
  String symbol();

  /** UCUM code. */
  String unit();

  /** Least value for which the formula is defined. */
  double min();

  /** Greatest value for which the formula is defined. */
  double max();
}
