package org.marshlight.contract;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;

/** Holds a single number to the bounds of its {@link Quantity}; absent numbers pass. */
public final class QuantityInRange implements ConstraintValidator<Quantity, Number> {

  private double low;
  private double high;

  @Override
  public void initialize(Quantity quantity) {
    low = quantity.low();
    high = quantity.high();
  }

  @Override
  public boolean isValid(Number value, ConstraintValidatorContext context) {
    return value == null || (value.doubleValue() >= low && value.doubleValue() <= high);
  }
}
