package org.marshlight.http.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.http.report.Report.Block;
import org.marshlight.http.report.Report.Figure;

/** How records are laid out for people. */
class BlocksTest {

  public record Outer(
      @Quantity(unit = "m3", low = 0, high = 9, meaning = "Gas; null without a tank.") Double gasM3,
      @TwelveMonths @Quantity(unit = "Cel", low = 0, high = 9, meaning = "Warmth.")
          List<Double> warmthC,
      @Meaning("What is inside.") Inner inner,
      @Meaning("Lines.") List<Inner> lines,
      @Meaning("Nothing.") List<Inner> nothing,
      @Meaning("No text.") String text) {}

  public record Inner(
      @Quantity(unit = Quantity.UNIT_BESIDE, low = 0, high = 9, meaning = "Amount.") double amount,
      @Meaning("UCUM code.") String unit) {}

  @Test
  void figuresMonthsAndTablesFollowTheShape() {
    List<Block> blocks =
        Blocks.of(
            "All",
            new Outer(
                null,
                Collections.nCopies(12, 1234.5),
                new Inner(0.012345, "kg"),
                List.of(new Inner(1, "kg"), new Inner(2e-9, "L")),
                List.of(),
                null));
    assertThat(blocks).extracting(Block::heading).containsExactly("All", "What is inside", "Lines");
    assertThat(blocks.get(0).figures()).containsExactly(new Figure("Gas", Words.NONE, "m\u00b3"));
    assertThat(blocks.get(0).months().get(0).unit()).isEqualTo("\u00b0C");
    assertThat(blocks.get(0).months().get(0).values()).hasSize(12).containsOnly("1230");
    assertThat(blocks.get(1).figures()).containsExactly(new Figure("Amount", "0.0123", "kg"));
    assertThat(blocks.get(2).grid().columns()).containsExactly("Amount", "UCUM code");
    assertThat(blocks.get(2).grid().rows().get(1)).containsExactly("2.00E-9", "L");
  }
}
