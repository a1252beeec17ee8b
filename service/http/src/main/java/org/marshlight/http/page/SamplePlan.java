package org.marshlight.http.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The plan that the page offers to try: the first of the sample requests. */
final class SamplePlan {

  static final String TEXT = read("/sample-requests/loop-hill-smallholding.json");

  private SamplePlan() {}

  private static String read(String path) {
    try (InputStream stream = SamplePlan.class.getResourceAsStream(path)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
