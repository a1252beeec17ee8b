package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.WebElement;

/** Wherever the reader is, the page says whether its answers are those of the plan shown. */
@QuarkusTest
class PageStatesTest extends OnThePage {

  private static final String TILT = "/cover/tiltDeg";
  private static final String VOLUME = "/tank/liquidVolumeM3";

  @AfterEach
  void online() {
    network(false);
    // the browser itself reports every request that was refused or failed
    browser.driver().manage().logs().get("browser");
  }

  @ParameterizedTest
  @CsvSource({"360, 740", "1280, 900", "1280, 600"})
  void anInvalidPlanIsSeenWhereItIsTyped(int width, int height) throws IOException {
    browser.size(width, height);
    browser.js("document.querySelector('#f-cover-tiltDeg').scrollIntoView({block: 'center'})");
    browser.type(TILT, "120");
    browser.settled("problems");
    assertInSight("#status");
    assertInSight("#old");
    assertThat(browser.find("#status").getText()).startsWith("1 of the fields");
    assertThat(browser.find("#status").getAttribute("role")).isEqualTo("status");
    pictures.screen("invalid-" + width + "x" + height);
    Accessibility.isComplete(browser);
    browser.type(TILT, "60");
    browser.settled("worked");
    assertThat(browser.find("#old").isDisplayed()).isFalse();
    assertInSight("#status");
    pictures.screen("valid-" + width + "x" + height);
  }

  @Test
  void whileThePlanIsWorkedTheAnswerIsMarkedAsOld() {
    browser.js(
        "window.waiting = [];"
            + "const real = window.fetch;"
            + "window.fetch = (...asked) => new Promise((go) => window.waiting.push(go))"
            + ".then(() => real(...asked));");
    browser.type(VOLUME, "7");
    browser.settled("working");
    assertInSight("#old");
    assertThat(browser.find("#status").getText()).startsWith("Working the year anew");
    browser.until(() -> (Boolean) browser.js("return window.waiting.length > 0"));
    browser.js("window.waiting.forEach((go) => go())");
    browser.settled("worked");
    assertThat(browser.find("#old").isDisplayed()).isFalse();
  }

  @Test
  void aServiceThatDoesNotRespondIsSeenWhereTheReaderIs() {
    browser.js("document.querySelector('#leg-money').scrollIntoView()");
    network(true);
    browser.type(VOLUME, "7");
    browser.settled("offline");
    assertInSight("#status");
    assertInSight("#old");
    network(false);
    browser.type(VOLUME, "8");
    browser.settled("worked");
  }

  @Test
  void anInvalidPlanHasNoReportButIsToldOfOnThePage() {
    browser.type(TILT, "120");
    browser.settled("problems");
    browser.press(browser.find("#plan-form button[type=submit]"));
    assertThat(browser.driver().getWindowHandles()).hasSize(1);
    assertThat(browser.driver().switchTo().activeElement()).isEqualTo(browser.field(TILT));
    assertThat(browser.find("#status").getText()).startsWith("There is no report of this plan");
  }

  @Test
  void anOldAnswerIsMarkedOnPaperToo() throws IOException {
    browser.type(TILT, "120");
    browser.settled("problems");
    assertThat(pictures.printed("invalid-page", 1)).contains("Not up to date");
  }

  @Test
  void withoutScriptsAWrongFieldIsToldBesideItWithTheEntriesKept() throws IOException {
    browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.driver().get(home.toString());
      replace("/people/count", "7");
      replace(VOLUME, "600000");
      browser.find("#plan-form button[type=submit]").click();
      browser.until(() -> !browser.all(".problems a").isEmpty());
      List<WebElement> summary = browser.all(".problems a");
      assertThat(summary).hasSize(1);
      assertThat(summary.get(0).getText()).startsWith("Liquid volume must be from 0.2 to 500");
      WebElement field = browser.field(VOLUME);
      assertThat(field.getAttribute("value")).isEqualTo("600000");
      assertThat(browser.find("#" + field.getAttribute("aria-describedby")).getText())
          .contains("must be from 0.2 to 500");
      assertThat(value("/people/count")).isEqualTo("7");
      replace(VOLUME, "6,5");
      browser.find("#plan-form button[type=submit]").click();
      browser.until(() -> !browser.all("[data-part=plan]").isEmpty());
      assertThat(browser.find("[data-part=plan]").getText())
          .contains("How many people 7", "Liquid volume 6.5");
    } finally {
      browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  private static void replace(String pointer, String text) {
    WebElement field = browser.field(pointer);
    field.clear();
    field.sendKeys(text);
  }

  private static void network(boolean off) {
    browser.command("Network.enable", Map.of());
    browser.command(
        "Network.emulateNetworkConditions",
        Map.of("offline", off, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Nothing lies over its middle, and its middle is on the screen. */
  private static void assertInSight(String selector) {
    Object seen =
        browser.js(
            "const element = document.querySelector(arguments[0]);"
                + "const box = element.getBoundingClientRect();"
                + "const top = document.elementFromPoint("
                + "  box.left + Math.min(20, box.width / 2), box.top + box.height / 2);"
                + "return top !== null && (element.contains(top) || top.contains(element));",
            selector);
    assertThat(seen).as(selector + " is in sight").isEqualTo(true);
    assertThat(browser.find(selector).getText()).isNotBlank();
  }
}
