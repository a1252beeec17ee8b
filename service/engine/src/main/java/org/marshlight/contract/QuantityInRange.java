package org.marshlight.contract;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;

/** Holds a single number to the bounds of its {@link Quantity}; absent numbers pass. */
public final class QuantityInRange implements ConstraintValidator<Quantity, Number> {

  private double min;
  private double max;

  @Override
  public void initialize(Quantity quantity) {
    min = quantity.min();
    max = quantity.max();
  }

  @Override
  public boolean isValid(Number value, ConstraintValidatorContext context) {
    return value == null || (value.doubleValue() >= min && value.doubleValue() <= max);
  }
}
