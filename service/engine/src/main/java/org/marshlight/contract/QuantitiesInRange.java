package org.marshlight.contract;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.List;

/** Holds every number of a list to the bounds of its {@link Quantity}, and lets none be absent. */
public final class QuantitiesInRange
    implements ConstraintValidator<Quantity, List<? extends Number>> {

  private double min;
  private double max;

  @Override
  public void initialize(Quantity quantity) {
    min = quantity.min();
    max = quantity.max();
  }

  @Override
  public boolean isValid(List<? extends Number> values, ConstraintValidatorContext context) {
    if (values == null) {
      return true;
    }
    boolean valid = true;
    for (int i = 0; i < values.size(); i++) {
      Number value = values.get(i);
      if (value == null || !(value.doubleValue() >= min && value.doubleValue() <= max)) {
        valid = false;
        context
            .buildConstraintViolationWithTemplate(context.getDefaultConstraintMessageTemplate())
            .addContainerElementNode(null, List.class, 0)
            .inIterable()
            .atIndex(i)
            .addConstraintViolation();
      }
    }
    if (!valid) {
      context.disableDefaultConstraintViolation();
    }
    return valid;
  }
}
