package org.marshlight.contract;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record for which the compiler run generates a builder, {@code <Record>Builder}, and an
 * interface of withers, {@code <Record>Builder.With}.
 *
 * <p>A record is built by component names where positions could be confused. The generated methods
 * do not repeat the constraints of the components: a record is validated once, as a whole.
 */
@RecordBuilder.Template(options = @RecordBuilder.Options(inheritComponentAnnotations = false))
@Retention(RetentionPolicy.SOURCE)
@Target(ElementType.TYPE)
public @interface WithBuilder {}
