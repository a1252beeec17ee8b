package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What a planner does with the page, from the first look to the printed report. */
@QuarkusTest
class PlannerPageTest extends OnThePage {

  private static final String VOLUME = "/tank/liquidVolumeM3";

  @AfterEach
  void nothingWentWrong() {
    browser.hasNoComplaints();
  }

  @Test
  void aFirstResultAndTheDangersAreOnScreenAtOnce() throws IOException {
    assertThat(browser.find("#shortly dd").getText()).matches("\\d.*°C");
    Number screen = (Number) browser.js("return innerHeight");
    assertThat(bottom("#shortly")).isLessThanOrEqualTo(screen.doubleValue() + 1);
    assertThat(top("#dangers")).isLessThan(top("#shortly"));
    assertThat(browser.all("#dangers li")).hasSizeGreaterThan(4).allMatch(WebElement::isDisplayed);
    assertThat(browser.all("details #dangers")).isEmpty();
    pictures.guide("first-screen");
    Accessibility.isComplete(browser);
  }

  @Test
  void nothingIsAskedOfAnyoneElse() {
    List<?> elsewhere =
        (List<?>)
            browser.js(
                "return performance.getEntriesByType('resource').map((e) => e.name)"
                    + ".filter((name) => !name.startsWith(location.origin))");
    assertThat(elsewhere).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 360, 1280, 1920, 3840})
  void thePageFitsEveryScreen(int width) throws IOException {
    browser.size(width, 900);
    Number wide = (Number) browser.js("return document.documentElement.scrollWidth");
    assertThat(wide.intValue()).isLessThanOrEqualTo(width);
    if (width <= 1920) {
      pictures.whole("page-" + width);
    }
  }

  @Test
  void aPlanIsFilledInAndItsVerdictRead() throws IOException {
    String gas = figure("Gas in a year");
    browser.type("/people/count", "12");
    browser.settled("worked");
    assertThat(figure("Gas in a year")).isNotEqualTo(gas);
    WebElement glass = card("Glass over the tank");
    assertThat(glass.findElement(By.cssSelector("h3 .answer")).getText())
        .isIn("yes", "marginal", "no");
    assertThat(glass.findElements(By.cssSelector("li"))).isNotEmpty();
    browser.js("arguments[0].scrollIntoView({block: 'center'})", glass);
    pictures.guide("verdict");
  }

  @Test
  void unitsAreChangedWithoutLoss() throws IOException {
    browser.type(VOLUME, "6.3");
    browser.settled("worked");
    String before = browser.driver().getCurrentUrl();
    browser.press(browser.find("[name=units][value=us-customary]"));
    browser.settled("worked");
    assertThat(browser.field(VOLUME).getAttribute("value")).isEqualTo("1664");
    assertThat(browser.find("#shortly dd").getText()).contains("°F");
    pictures.guide("us-customary");
    Accessibility.isComplete(browser);
    browser.press(browser.find("[name=units][value=si]"));
    browser.settled("worked");
    assertThat(browser.field(VOLUME).getAttribute("value")).isEqualTo("6.3");
    assertThat(browser.driver().getCurrentUrl()).isEqualTo(before);
  }

  @Test
  void aNumberTypedInCustomaryUnitsStaysAsItWasTyped() {
    browser.press(browser.find("[name=units][value=us-customary]"));
    browser.settled("worked");
    browser.type(VOLUME, "1500");
    browser.settled("worked");
    browser.open(browser.driver().getCurrentUrl());
    assertThat(browser.field(VOLUME).getAttribute("value")).isEqualTo("1500");
    assertThat(browser.find("[name=units][value=us-customary]").isSelected()).isTrue();
  }

  @Test
  void aBrokenFieldIsToldBesideItAndMended() throws IOException {
    String gas = figure("Gas in a year");
    browser.type("/cover/tiltDeg", "120");
    browser.settled("problems");
    WebElement field = browser.field("/cover/tiltDeg");
    assertThat(field.getAttribute("aria-invalid")).isEqualTo("true");
    WebElement fault = browser.find("#" + field.getAttribute("aria-describedby"));
    assertThat(fault.isDisplayed()).isTrue();
    assertThat(fault.getText()).contains("90");
    assertThat(figure("Gas in a year")).isEqualTo(gas);
    assertThat(browser.find("#status").getText()).startsWith("1 ");
    browser.js("arguments[0].scrollIntoView({block: 'center'})", field);
    pictures.guide("broken-field");
    Accessibility.isComplete(browser);
    browser.type("/cover/tiltDeg", "60");
    browser.settled("worked");
    assertThat(fault.isDisplayed()).isFalse();
    assertThat(field.getAttribute("aria-invalid")).isNull();
    // the browser itself tells of every answer that is a refusal
    browser.driver().manage().logs().get("browser");
  }

  @Test
  void everyChartHasWordsAndATable() {
    List<WebElement> charts = browser.all("figure.drawn");
    assertThat(charts).hasSizeGreaterThan(10);
    Object open =
        browser.js(
            "const shut = [];"
                + "for (const figure of document.querySelectorAll('figure.drawn')) {"
                + "  const summary = figure.querySelector('details.behind > summary');"
                + "  for (let up = figure.parentElement; up; up = up.parentElement)"
                + "    if (up.tagName === 'DETAILS') up.open = true;"
                + "  summary.click();"
                + "  const rows = figure.querySelectorAll('details[open] tbody tr');"
                + "  const shown = rows.length > 0 && rows[0].getBoundingClientRect().height > 0;"
                + "  const told = figure.querySelector('svg[role=img]').getAttribute('aria-label');"
                + "  if (!shown || !told) shut.push(figure.id);"
                + "}"
                + "return shut;");
    assertThat((List<?>) open).isEmpty();
    Accessibility.isComplete(browser);
  }

  @Test
  void aSavedAddressAndAnOpenedFileGiveThePlanBack() throws IOException {
    browser.type("/name", "Invented: below the old mill");
    browser.type(VOLUME, "7.25");
    browser.settled("worked");
    String address = browser.driver().getCurrentUrl();
    String gas = figure("Gas in a year");
    browser.open(address);
    assertThat(browser.field(VOLUME).getAttribute("value")).isEqualTo("7.25");
    assertThat(figure("Gas in a year")).isEqualTo(gas);
    openFile(
        "{\"name\": \"From a file\", \"site\": {\"climate\": {\"id\": \"burlington\"}},"
            + " \"people\": {\"count\": 2}, \"tank\": {\"liquidVolumeM3\": 3.5}}");
    assertThat(browser.field("/name").getAttribute("value")).isEqualTo("From a file");
    assertThat(browser.field("/site/climate/id").getAttribute("value")).isEqualTo("burlington");
    assertThat(browser.find("[data-slot=crop]").getText()).isEmpty();
    assertThat(browser.driver().getCurrentUrl()).isNotEqualTo(address);
  }

  @Test
  void thePrintedPageOpensWithTheDangers() throws IOException {
    String first = pictures.printed("page", 1);
    for (WebElement hazard : browser.all("#dangers li strong")) {
      assertThat(first).contains(hazard.getText());
    }
  }

  @Test
  void theReportIsOpenedPrintedAndComplete() throws IOException {
    browser.press(browser.find("#plan-form button[type=submit]"));
    String page = browser.driver().getWindowHandle();
    browser.until(() -> browser.driver().getWindowHandles().size() == 2);
    String report =
        browser.driver().getWindowHandles().stream()
            .filter(handle -> !handle.equals(page))
            .findFirst()
            .orElseThrow();
    browser.driver().switchTo().window(report);
    browser.until(() -> !browser.all("[data-part=permit]").isEmpty());
    Accessibility.isComplete(browser);
    String first = pictures.printed("report", 1);
    for (WebElement hazard : browser.all("#dangers li strong")) {
      assertThat(first).contains(hazard.getText());
    }
    assertThat(browser.find("[data-part=permit]").getText()).contains("not given");
    for (int width : new int[] {360, 1280, 1920}) {
      browser.size(width, 900);
      pictures.whole("report-" + width);
    }
    browser.driver().close();
    browser.driver().switchTo().window(page);
  }

  @Test
  void aLongStudyTellsHowFarItIsAndIsStopped() {
    WebElement study = browser.find("#sure");
    browser.js("document.getElementById('draws').value = '1024'");
    browser.press(study.findElement(By.cssSelector(".run")));
    WebElement bar = study.findElement(By.cssSelector("progress"));
    browser.until(() -> bar.isDisplayed() && bar.getAttribute("max") != null);
    browser.press(study.findElement(By.cssSelector(".stop-it")));
    browser.until(() -> "done".equals(study.getAttribute("data-state")));
    assertThat(study.findElement(By.cssSelector(".status")).getText()).isEqualTo("Stopped.");
    assertThat(study.findElements(By.cssSelector(".ranges figure"))).isEmpty();
  }

  @Test
  void studiesDrawRangesAndTellWhatMatters() throws IOException {
    openFile(
        "{\"name\": \"Invented: a tank alone\", \"site\": {\"climate\": {\"id\": \"burlington\"}},"
            + " \"people\": {\"count\": 3}, \"tank\": {}, \"gas\": {\"storeM3\": 1.5,"
            + " \"uses\": [{\"use\": \"cooking\", \"hoursPerDay\": 1}]}}");
    browser.js("document.getElementById('draws').value = '64'");
    for (String id : List.of("sure", "matters")) {
      WebElement study = browser.find("#" + id);
      browser.press(study.findElement(By.cssSelector(".run")));
      browser.until(() -> !study.findElements(By.cssSelector("figure svg")).isEmpty());
      browser.press(study.findElement(By.cssSelector("figure summary")));
      assertThat(study.findElements(By.cssSelector("figure tbody tr"))).hasSizeGreaterThan(1);
      browser.js("arguments[0].scrollIntoView({block: 'start'})", study);
      pictures.guide(id);
    }
    Accessibility.isComplete(browser);
    browser.type("/people/count", "4");
    browser.settled("worked");
    assertThat(browser.find("#sure .ranges").getAttribute("class")).contains("stale");
  }

  @Test
  void everythingIsReachedByKeyboard() {
    WebElement body = browser.find("body");
    body.sendKeys(Keys.TAB);
    assertThat(focused().getText()).isEqualTo("To the results");
    assertThat(focused().getRect().getX()).isNotNegative();
    for (int i = 0; i < 40 && !"/people/count".equals(focused().getAttribute("name")); i++) {
      focused().sendKeys(Keys.TAB);
      Object ring = browser.js("return getComputedStyle(document.activeElement).outlineStyle");
      assertThat(ring).isNotEqualTo("none");
    }
    WebElement help = browser.find(".help > summary");
    help.sendKeys(Keys.ENTER);
    assertThat(browser.find(".help[open] .told").isDisplayed()).isTrue();
    WebElement add = browser.find("[data-pointer='/feeds'] > .add");
    int before = browser.all("[data-pointer='/feeds'] .entry").size();
    add.sendKeys(Keys.ENTER);
    assertThat(browser.all("[data-pointer='/feeds'] .entry")).hasSize(before + 1);
    assertThat(focused().getAttribute("name")).startsWith("/feeds/" + before);
    browser.settled("problems");
    browser.driver().manage().logs().get("browser");
  }

  @Test
  void withoutScriptsTheFormGivesTheReport() {
    browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.driver().get(home.toString());
      WebElement people = browser.field("/people/count");
      people.clear();
      people.sendKeys("7");
      browser.find("#plan-form button[type=submit]").click();
      browser.until(() -> !browser.all("[data-part=plan]").isEmpty());
      assertThat(browser.find("[data-part=plan]").getText()).contains("How many people 7");
      assertThat(browser.find("[data-part=dangers]").isDisplayed()).isTrue();
    } finally {
      browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  private static WebElement focused() {
    return browser.driver().switchTo().activeElement();
  }

  private static void openFile(String plan) throws IOException {
    Path file = Files.createTempFile("plan", ".json");
    Files.writeString(file, plan);
    browser.js("document.body.dataset.state = 'opening'");
    browser.find("#file").sendKeys(file.toString());
    browser.settled("worked");
    Files.delete(file);
  }

  private static WebElement card(String component) {
    return browser.all(".card").stream()
        .filter(card -> card.findElement(By.cssSelector("h3")).getText().startsWith(component))
        .findFirst()
        .orElseThrow();
  }

  private static double top(String selector) {
    return edge(selector, "top");
  }

  private static double bottom(String selector) {
    return edge(selector, "bottom");
  }

  private static double edge(String selector, String side) {
    String script =
        "return document.querySelector(arguments[0]).getBoundingClientRect()[arguments[1]]";
    return ((Number) browser.js(script, selector, side)).doubleValue();
  }
}
