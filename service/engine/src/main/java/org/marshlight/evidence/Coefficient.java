package org.marshlight.evidence;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Binds a component of a coefficient record to the coefficient of that id. */
@Documented
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
public @interface Coefficient {

  /** Id of the coefficient; in a {@link CatalogueRow}, its short name. */
  String value();
}
