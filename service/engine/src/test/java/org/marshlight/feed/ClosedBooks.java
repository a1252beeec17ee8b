package org.marshlight.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Holds the books of a process to the conservation of what is conserved. */
public final class ClosedBooks {

  private static final double RELATIVE = 1e-9;

  private ClosedBooks() {}

  /** What was received must be what was given and kept, for every conserved quantity. */
  public static void assertClosed(Account account) {
    Matter in = Matter.sum(account.received().stream().map(Account.Entry::matter).toList());
    Matter out =
        Matter.sum(account.gave().stream().map(Account.Entry::matter).toList())
            .plus(account.kept());
    closes("water", in.waterKg(), out.waterKg());
    closes("COD", in.codKg(), out.codKg());
    closes("carbon", in.carbonKg(), out.carbonKg());
    closes("nitrogen", in.nitrogenKg(), out.nitrogenKg());
    closes("phosphorus", in.phosphorusKg(), out.phosphorusKg());
    closes("potassium", in.potassiumKg(), out.potassiumKg());
  }

  private static void closes(String quantity, double in, double out) {
    double scale = Math.max(Math.max(Math.abs(in), Math.abs(out)), 1e-12);
    assertThat(out).as(quantity).isCloseTo(in, within(RELATIVE * scale));
  }
}
