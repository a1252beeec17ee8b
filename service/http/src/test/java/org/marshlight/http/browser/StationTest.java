package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A listed station brings its own place; nothing of the place before it is left in the plan. */
@QuarkusTest
class StationTest extends OnThePage {

  private static final String STATION = "/site/climate/id";
  private static final String RAIN = "/site/climate/rainMm";

  @Test
  void aStationReplacesThePlaceBeforeIt() throws IOException {
    choose(STATION, "christchurch");
    assertThat(planned("/site"))
        .isEqualTo(Map.of("climate", Map.of("id", "christchurch"), "soil", "moist-loam"));
    // the station's own line in the list of climates
    assertThat(pale("/site/latitudeDeg")).isEqualTo("\u221243.5");
    assertThat(value("/site/latitudeDeg")).isEmpty();
    assertThat(value("/site/elevationM")).isEmpty();
    assertThat(figure("Liquor, mean of the year")).startsWith("20.4");
    WebElement gas = browser.find("#shortly .answers li");
    assertThat(gas.getText()).startsWith("Catching the gas").endsWith("no");
    pictures.screen("station");
  }

  @Test
  void whatAStationReplacedComesBackWithTheOwnNormals() {
    choose(STATION, "christchurch");
    choose(STATION, "burlington");
    choose(STATION, "");
    assertThat(value("/site/latitudeDeg")).isEqualTo("46.6");
    assertThat(value("/site/elevationM")).isEqualTo("620");
    assertThat(value("/site/climate/monthly/meanAirTemperatureC/0")).isEqualTo("-2.5");
  }

  @Test
  void ownRainIsGivenBesideAStation() {
    choose(STATION, "christchurch");
    assertThat(at(RAIN).isDisplayed()).isTrue();
    assertThat(at("/site/climate/monthly/meanAirTemperatureC").isDisplayed()).isFalse();
    for (int month = 0; month < 12; month++) {
      WebElement field = browser.field(RAIN + "/" + month);
      field.sendKeys(Keys.chord(Keys.CONTROL, "a"), String.valueOf(50 + month));
    }
    browser.settled("worked");
    assertThat((List<?>) planned(RAIN)).hasSize(12).first().isEqualTo(50L);
    assertThat(planned(STATION)).isEqualTo("christchurch");
  }

  private static String pale(String pointer) {
    browser.until(() -> !browser.field(pointer).getAttribute("placeholder").isEmpty());
    return browser.field(pointer).getAttribute("placeholder");
  }
}
