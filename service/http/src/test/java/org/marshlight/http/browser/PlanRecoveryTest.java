package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What was unticked, removed or replaced comes back. */
@QuarkusTest
class PlanRecoveryTest extends OnThePage {

  private static final String PEOPLE = "/people/count";

  @ParameterizedTest
  @ValueSource(strings = {"/fuel", "/compost", "/money", "/cover"})
  void aPartThatIsUntickedAndTickedAgainKeepsItsEntries(String section) {
    choose("/people/wastewater", "all");
    browser.type(PEOPLE, "5");
    browser.settled("worked");
    Object before = planned(section);
    assertThat(before).isNotNull();
    tickHas(section);
    assertThat(planned(section)).isNull();
    tickHas(section);
    assertThat(planned(section)).isEqualTo(before);
  }

  @Test
  void aRemovedBedIsPutBackWhereItWas() {
    browser.type(PEOPLE, "5");
    browser.settled("worked");
    List<?> before = (List<?>) planned("/beds");
    int entries = before.size();
    browser.press(at("/beds").findElement(By.cssSelector(".entry .remove")));
    assertThat(bedsShown()).isEqualTo(entries - 1);
    WebElement undo = at("/beds").findElement(By.cssSelector(":scope > .undo"));
    assertThat(undo.getText()).startsWith("Put back the removed No. 1");
    assertThat(browser.driver().switchTo().activeElement()).isEqualTo(undo);
    undo.sendKeys(Keys.ENTER);
    assertThat(bedsShown()).isEqualTo(entries);
    assertThat(undo.isDisplayed()).isFalse();
    browser.settled("worked");
    assertThat(planned("/beds")).isEqualTo(before);
  }

  @Test
  void aRemovedOverrideIsPutBack() {
    // a number of the coefficient book within its range
    String id = "climate.rain-where-unknown";
    WebElement list = at("/coefficients");
    browser.press(list.findElement(By.cssSelector(":scope > .add")));
    list.findElement(By.cssSelector(".key")).sendKeys(id);
    list.findElement(By.cssSelector(".amount")).sendKeys("61");
    browser.settled("worked");
    Object before = planned("/coefficients");
    assertThat(before).isEqualTo(Map.of(id, 61L));
    browser.press(list.findElement(By.cssSelector(".entry .remove")));
    browser.settled("worked");
    assertThat(planned("/coefficients")).isNull();
    browser.press(list.findElement(By.cssSelector(":scope > .undo")));
    browser.settled("worked");
    assertThat(planned("/coefficients")).isEqualTo(before);
  }

  @Test
  void theDemoReplacesAPlanOnlyAfterAQuestion() {
    browser.type(PEOPLE, "9");
    browser.settled("worked");
    WebElement fresh = browser.find("#fresh");
    fresh.sendKeys(Keys.ENTER);
    WebElement asked = browser.find("#fresh-asked");
    assertThat(asked.isDisplayed()).isTrue();
    Accessibility.isComplete(browser);
    browser.driver().switchTo().activeElement().sendKeys(Keys.ESCAPE);
    browser.until(() -> !asked.isDisplayed());
    assertThat(value(PEOPLE)).isEqualTo("9");
    assertThat(browser.driver().switchTo().activeElement()).isEqualTo(fresh);
    fresh.sendKeys(Keys.ENTER);
    browser.find("#fresh-yes").sendKeys(Keys.ENTER);
    browser.settled("worked");
    assertThat(value(PEOPLE)).isEqualTo("4");
  }

  @Test
  void backAndForwardRecoverEarlierPlans() {
    browser.type(PEOPLE, "12");
    browser.settled("worked");
    tickHas("/fuel");
    browser.find("#fresh").sendKeys(Keys.ENTER);
    browser.find("#fresh-yes").sendKeys(Keys.ENTER);
    browser.settled("worked");
    browser.driver().navigate().back();
    browser.until(() -> value(PEOPLE).equals("12"));
    browser.settled("worked");
    assertThat(planned("/fuel")).isNull();
    browser.driver().navigate().back();
    browser.until(() -> browser.find("[name='has:/fuel']").isSelected());
    assertThat(value(PEOPLE)).isEqualTo("12");
    browser.driver().navigate().back();
    browser.until(() -> value(PEOPLE).equals("4"));
    browser.driver().navigate().forward();
    browser.until(() -> value(PEOPLE).equals("12"));
    browser.settled("worked");
  }

  @Test
  void aJumpWithinThePageKeepsThePlan() {
    browser.type(PEOPLE, "11");
    browser.settled("worked");
    String address = browser.driver().getCurrentUrl();
    browser.find(".skip").sendKeys(Keys.ENTER);
    browser.until(() -> browser.driver().getCurrentUrl().equals(address));
    assertThat(value(PEOPLE)).isEqualTo("11");
    assertThat(planned(PEOPLE)).isEqualTo(11L);
  }

  private static int bedsShown() {
    return at("/beds").findElements(By.cssSelector(":scope > .entries > .entry")).size();
  }
}
