package org.marshlight.evidence;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a published equation: a public static method that takes doubles and gives one double.
 *
 * <p>Models call the method directly; the formula book finds it through this annotation.
 */
@Documented
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface Formula {

  /** Stable id, {@code <package>.<name>}. */
  String id();

  /** Symbol of the result, as in the source. */
  String symbol();

  /** The right-hand side as text, in the symbols of the arguments. */
  String expression();

  /** UCUM code of the result. */
  String unit();

  /** What the result is, in one sentence. */
  String meaning();

  /** Id of the source. */
  String source();

  /** Number of the equation or the place in the source; empty if it has none. */
  String equation() default "";
}
