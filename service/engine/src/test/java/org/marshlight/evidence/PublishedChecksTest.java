package org.marshlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds every formula to what sources outside the project say of it. */
class PublishedChecksTest {

  private static final Set<Mark> CHECK_MARKS =
      Set.of(Mark.PUBLISHED, Mark.COMMON_PRACTICE, Mark.FROM_MEMORY);

  @TestFactory
  Stream<DynamicTest> eachRow() {
    return PublishedCheck.all().stream()
        .map(
            check ->
                DynamicTest.dynamicTest(
                    check.file() + ": " + check.id(),
                    () ->
                        assertThat(check.got())
                            .as("%s, %s", check.formula(), check.source())
                            .isCloseTo(check.expected(), within(check.tolerance()))));
  }

  @Test
  void everyCheckNamesAKnownSourceAndAnHonestMark() {
    for (PublishedCheck check : PublishedCheck.all()) {
      assertThat(SourceList.standard().find(check.source())).as(check.id()).isPresent();
      assertThat(CHECK_MARKS).as(check.id()).contains(check.mark());
      assertThat(check.mark() == Mark.PUBLISHED)
          .as("%s: a value is published if, and only if, it was read", check.id())
          .isEqualTo(check.read());
    }
  }

  @Test
  void noToleranceIsWideEnoughToPassAnything() {
    for (PublishedCheck check : PublishedCheck.all()) {
      assertThat(check.tolerance())
          .as(check.id())
          .isPositive()
          .isLessThanOrEqualTo(Math.max(0.25 * Math.abs(check.expected()), 0.02));
    }
  }

  @Test
  void caseNamesAreUnique() {
    List<String> names = PublishedCheck.all().stream().map(c -> c.file() + ": " + c.id()).toList();
    assertThat(names).doesNotHaveDuplicates();
  }
}
