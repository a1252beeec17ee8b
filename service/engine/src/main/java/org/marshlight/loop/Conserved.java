package org.marshlight.loop;

import java.util.function.ToDoubleFunction;
import org.marshlight.contract.WireName;
import org.marshlight.feed.Matter;

/** Quantities that every process of the loop must conserve. */
public enum Conserved {
  WATER(Matter::waterKg),
  COD(Matter::codKg),
  CARBON(Matter::carbonKg),
  NITROGEN(Matter::nitrogenKg),
  PHOSPHORUS(Matter::phosphorusKg),
  POTASSIUM(Matter::potassiumKg);

  private final ToDoubleFunction<Matter> amount;

  Conserved(ToDoubleFunction<Matter> amount) {
    this.amount = amount;
  }

  /** How much of the quantity an amount of matter holds, kg. */
  public double of(Matter matter) {
    return amount.applyAsDouble(matter);
  }

  /** Name in answers. */
  public String wireName() {
    return WireName.of(this);
  }
}
