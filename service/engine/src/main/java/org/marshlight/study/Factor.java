package org.marshlight.study;

import org.marshlight.contract.Pointer;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.loop.PlanField;
import org.marshlight.statistics.Spread;
import org.marshlight.statistics.SpreadFit;

/** One uncertain number of a study, with its spread. */
sealed interface Factor {

  /** Name under which it is listed: a pointer into the plan, or the name of a climate shift. */
  String id();

  /** What it is. */
  String meaning();

  /** UCUM code. */
  String unit();

  Spread spread();

  /**
   * A coefficient.
   *
   * @param row its row
   * @param ordinal its ordinal
   * @param spread its spread
   */
  record OfCoefficient(CoefficientRow row, int ordinal, Spread spread) implements Factor {

    /** A coefficient with the book's own spread. */
    static OfCoefficient of(CoefficientRow row) {
      return of(row, SpreadFit.of(row));
    }

    static OfCoefficient of(CoefficientRow row, Spread spread) {
      return new OfCoefficient(row, CoefficientBook.standard().ordinal(row.id()), spread);
    }

    @Override
    public String id() {
      return Pointer.child("/coefficients", row.id());
    }

    @Override
    public String meaning() {
      return row.note();
    }

    @Override
    public String unit() {
      return row.unit();
    }
  }

  /** A field of the plan. */
  record OfField(PlanField field, Spread spread) implements Factor {

    @Override
    public String id() {
      return field.pointer();
    }

    @Override
    public String meaning() {
      return field.meaning();
    }

    @Override
    public String unit() {
      return field.unit();
    }
  }

  /** A departure of the climate. */
  record OfClimate(ClimateShift shift, Spread spread) implements Factor {

    @Override
    public String id() {
      return shift.id();
    }

    @Override
    public String meaning() {
      return shift.meaning();
    }

    @Override
    public String unit() {
      return shift.unit();
    }
  }
}
