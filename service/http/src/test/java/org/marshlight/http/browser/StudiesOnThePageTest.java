package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** What the page says of a study from its start to its end. */
@QuarkusTest
class StudiesOnThePageTest extends OnThePage {

  /** Keeps every text that the status of a study shows. */
  private static final String LISTEN =
      """
      window.told = [];
      new MutationObserver(() => window.told.push(arguments[0].textContent))
        .observe(arguments[0], {childList: true, characterData: true, subtree: true});
      """;

  /** Answers the first two requests for a study as a busy service does. */
  private static final String BUSY_TWICE =
      """
      const real = window.fetch;
      window.asked = 0;
      window.fetch = (path, request) => {
        if (!String(path).startsWith('/v1/studies/') || ++window.asked > 2) {
          return real(path, request);
        }
        const headers = {'Retry-After': '0', 'Content-Type': 'application/problem+json'};
        return Promise.resolve(
          new Response('{"detail": "busy", "errors": []}', {status: 503, headers}));
      };
      """;

  @Test
  void aStudyIsAskedForAgainWhileTheServiceIsBusy() {
    WebElement study = browser.find("#sure");
    WebElement status = study.findElement(By.cssSelector(".status"));
    assertThat(status.getText()).isEqualTo("Not computed for this plan yet.");
    browser.js(BUSY_TWICE);
    browser.js(LISTEN, status);
    browser.js("document.getElementById('draws').value = '64'");
    browser.press(study.findElement(By.cssSelector(".run")));
    browser.until(() -> !study.findElements(By.cssSelector("figure svg")).isEmpty());
    List<?> told = (List<?>) browser.js("return window.told");
    assertThat(told.get(0)).isEqualTo("Working \u2026");
    assertThat(told.get(1)).isEqualTo("The service is busy; trying again.");
    assertThat(browser.js("return window.asked")).isEqualTo(3L);
    assertThat(told.contains("Not computed for this plan yet.")).isFalse();
    assertThat(status.getText()).isEqualTo("Drawn 64 times.");
  }

  @Test
  void aWaitForABusyServiceCanBeStopped() {
    WebElement study = browser.find("#matters");
    browser.js(BUSY_TWICE.replace("'Retry-After': '0'", "'Retry-After': '3600'"));
    browser.press(study.findElement(By.cssSelector(".run")));
    WebElement status = study.findElement(By.cssSelector(".status"));
    browser.until(() -> status.getText().startsWith("The service is busy"));
    browser.press(study.findElement(By.cssSelector(".stop-it")));
    browser.until(() -> status.getText().equals("Stopped."));
  }
}
