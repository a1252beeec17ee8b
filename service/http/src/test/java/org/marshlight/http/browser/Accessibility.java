package org.marshlight.http.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** An automated check of what stands on the page against WCAG 2.2 AA. */
final class Accessibility {

  private static final String CHECKER = read();

  private static final String CHECK =
      """
      const done = arguments[arguments.length - 1];
      const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
      // the annex is one table after another of the kind that the other parts show
      axe.run({exclude: [['[data-part=annex]']]}, {runOnly: rules, resultTypes: ['violations'], elementRef: false})
        .then((result) => done(result.violations.map((v) =>
          v.id + ' (' + v.impact + '): ' + v.help + ': '
            + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 200)).join(' | '))))
        .catch((failure) => done([String(failure)]));
      """;

  private Accessibility() {}

  /** Nothing is found. */
  static void isComplete(Browser browser) {
    browser.js(CHECKER);
    List<?> found = (List<?>) browser.driver().executeAsyncScript(CHECK);
    assertThat(found).isEmpty();
  }

  private static String read() {
    try (InputStream stream = Accessibility.class.getResourceAsStream("/axe.min.js")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
