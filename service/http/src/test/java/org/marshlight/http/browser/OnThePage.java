package org.marshlight.http.browser;

import io.quarkus.test.common.http.TestHTTPResource;
import java.io.IOException;
import java.net.URL;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A test that opens the planner's page in a browser before each of its methods. */
abstract class OnThePage {

  static Browser browser;
  static Pictures pictures;

  @TestHTTPResource URL home;

  @BeforeAll
  static void openBrowser() throws IOException {
    browser = new Browser();
    pictures = new Pictures(browser);
  }

  @AfterAll
  static void closeBrowser() throws IOException {
    browser.close();
  }

  @BeforeEach
  void openPage() {
    browser.usualSize();
    browser.open(home.toString());
  }

  /** A value of the plan that the page's address holds; null for none. */
  static Object planned(String pointer) {
    return browser
        .driver()
        .executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "const pointer = arguments[0];"
                + "import('/page/plan.js').then(async ({get, unpacked}) => {"
                + "  const packed = new URLSearchParams(location.hash.slice(1)).get('p');"
                + "  done(get(await unpacked(packed), pointer) ?? null);"
                + "});",
            pointer);
  }

  static String value(String pointer) {
    return browser.field(pointer).getAttribute("value");
  }

  static WebElement at(String pointer) {
    return browser.find("[data-pointer='" + pointer + "']");
  }

  static void choose(String pointer, String option) {
    browser.js(
        "const field = document.querySelector(arguments[0]);"
            + "field.value = arguments[1];"
            + "field.dispatchEvent(new Event('input', {bubbles: true}));",
        "[name='" + pointer + "']",
        option);
    browser.settled("worked");
  }

  static String figure(String label) {
    return browser.all("#shortly dl div").stream()
        .filter(pair -> pair.findElement(By.cssSelector("dt")).getText().equals(label))
        .findFirst()
        .orElseThrow()
        .findElement(By.cssSelector("dd"))
        .getText();
  }

  static void tickHas(String section) {
    browser.press(browser.find("[name='has:" + section + "']"));
    browser.settled("worked");
  }
}
