package org.marshlight.contract;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.Size;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A list of exactly twelve values, January first. */
@Documented
@Size(min = 12, max = 12)
@Constraint(validatedBy = {})
@ReportAsSingleViolation
@Target({ElementType.FIELD, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
public @interface TwelveMonths {

  String message() default "must hold twelve values, January first";

  Class<?>[] groups() default {};

  Class<? extends Payload>[] payload() default {};
}
