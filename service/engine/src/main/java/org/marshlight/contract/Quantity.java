package org.marshlight.contract;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says once, on the field, what a number of a request or an answer is: unit, bounds and meaning.
 *
 * <p>On an input it is the constraint that {@code PlanCheck} enforces; on inputs and outputs alike
 * it is what the OpenAPI document and the tables of a report show. On a list it holds for every
 * element.
 */
@Documented
@Constraint(validatedBy = {QuantityInRange.class, QuantitiesInRange.class})
@Target({ElementType.FIELD, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
public @interface Quantity {

  /** Unit of a number whose unit stands in the sibling field {@code unit}. */
  String UNIT_BESIDE = "{unit}";

  /** As a bound of a number of an answer: there is none, and the document states none. */
  double UNBOUNDED = Double.POSITIVE_INFINITY;

  /** No temperature is lower; in degrees Celsius. */
  double ABSOLUTE_ZERO_C = -273.15;

  /** UCUM code; {@code 1} for counts and pure ratios. */
  String unit();

  /** Least legal value, inclusive; of an answer, a bound that every legal plan keeps. */
  double min();

  /** Greatest legal value, inclusive; of an answer, a bound that every legal plan keeps. */
  double max();

  /** What the number is, in one sentence. */
  String meaning();

  /** Id of the coefficient that stands in where an input is not given; empty if there is none. */
  String usual() default "";

  /** Why the bounds are where they are, for whoever is refused by them; empty if that is plain. */
  String reason() default "";

  String message() default "must be a number from {min} to {max}";

  Class<?>[] groups() default {};

  Class<? extends Payload>[] payload() default {};
}
