package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Numbers are read and shown as the reader writes them, and faults speak of them likewise. */
@QuarkusTest
class TypedNumbersOnThePageTest extends OnThePage {

  private static final String VOLUME = "/tank/liquidVolumeM3";
  private static final String DEPTH = "/tank/liquidDepthM";

  @AfterEach
  void forgetRefusals() {
    browser.driver().manage().logs().get("browser");
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/org/marshlight/http/form/typed-numbers.csv",
      numLinesToSkip = 1,
      delimiter = ',',
      quoteCharacter = '"')
  void thePageReadsNumbersAsTheServiceDoes(String typed, Double value) {
    Object read =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[arguments.length - 1];"
                    + "const text = arguments[0];"
                    + "import('/page/units.js').then(({parsed}) => done(parsed(text)));",
                typed);
    if (value == null) {
      assertThat(read).isNull();
    } else {
      assertThat(((Number) read).doubleValue()).isEqualTo(value);
    }
  }

  @Test
  void aRangeIsToldInTheUnitsShownByTheLabel() {
    customary();
    browser.type(VOLUME, "600000");
    browser.settled("problems");
    // 0.2 m3 and 500 m3 over 3.785411784 L, the definition of the US gallon
    assertThat(fault(VOLUME))
        .isEqualTo("Liquid volume must be from 52.9 to 132086 gal.")
        .doesNotContain("M3");
    browser.type(VOLUME, "132086");
    browser.settled("worked");
    browser.type(VOLUME, "52.8");
    browser.settled("problems");
    assertThat(fault(VOLUME)).contains("must be from 52.9");
    // so small a tank is refused for what is fed to it, and no longer for its range
    browser.type(VOLUME, "52.9");
    browser.settled("problems");
    assertThat(browser.find("#plan-form").getText()).doesNotContain("must be from");
  }

  @Test
  void aMonthOfTwelveIsToldByItsName() {
    browser.js("document.querySelectorAll('details.finer').forEach((d) => { d.open = true; })");
    browser.type("/people/presentFraction/2", "7");
    browser.settled("problems");
    assertThat(browser.find("[id='f-people-presentFraction-fault']").getText())
        .contains("At home, as a share of the month, Mar must be from 0 to 1.");
  }

  @Test
  void aDecimalCommaIsTakenAndAnAmbiguousOneIsAskedAbout() {
    browser.type(DEPTH, "1,5");
    browser.settled("worked");
    assertThat(planned(DEPTH)).isEqualTo(1.5);
    browser.type(DEPTH, "1,500");
    browser.settled("problems");
    assertThat(fault(DEPTH))
        .isEqualTo("Liquid depth: \"1,500\" can be read in two ways. Write 1500 or 1.5.");
    browser.type(DEPTH, "deep");
    browser.settled("problems");
    assertThat(fault(DEPTH)).startsWith("Liquid depth: \"deep\" is not a number.");
  }

  @Test
  void aConvertedNumberIsShownRoundedAndThePlanKeepsIt() {
    customary();
    // 1.4 m over 0.3048 m, the definition of the foot
    assertThat(value(DEPTH)).isEqualTo("4.59");
    assertThat(value("/tank/burialDepthM")).isEqualTo("0.656");
    WebElement depth = browser.field(DEPTH);
    depth.sendKeys("1", Keys.BACK_SPACE);
    browser.settled("worked");
    browser.until(() -> planned(DEPTH).equals(1.4));
    assertThat(value(DEPTH)).isEqualTo("4.59");
  }

  @Test
  void whatWasTypedInCustomaryUnitsIsShownAsItWasTyped() {
    customary();
    browser.type(VOLUME, "1517.25");
    browser.settled("worked");
    browser.open(browser.driver().getCurrentUrl());
    assertThat(value(VOLUME)).isEqualTo("1517.25");
  }

  private static void customary() {
    browser.press(browser.find("[name=units][value=us-customary]"));
    browser.settled("worked");
  }

  private static String fault(String pointer) {
    return browser.find("#" + browser.field(pointer).getAttribute("aria-describedby")).getText();
  }
}
