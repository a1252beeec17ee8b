package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One command sets up and runs the tests, and a busy machine does not break them. */
class TestCommandTest {

  private static final Path REPOSITORY = Path.of(System.getProperty("repository"));
  private static final String COMMAND = "bash .ci/test";

  /** Waits with a limit of their own, or without any end; all others wait with {@link Patience}. */
  private static final Pattern IMPATIENT =
      Pattern.compile(
          "onSpinWait\\(|awaitTermination\\(|\\.await\\(\\d|waitFor\\(\\d|setSoTimeout\\(\\d"
              + "|assertTimeout|@Timeout|driver\\(\\)\\.print\\(|imeout\\(Duration\\.of");

  @Test
  void theReadmeAndTheContinuousBuildUseTheSameCommand() throws IOException {
    assertThat(read("README.md")).contains("\n```\n" + COMMAND + "\n```\n");
    assertThat(read(".ci/run")).contains(COMMAND).doesNotContain("mvn verify", "apt-get");
    assertThat(read(".ci/test")).contains("apt-get install", "mvn verify", "Still missing");
  }

  @Test
  void noTestWaitsWithALimitThatASlowMachineBreaks() throws IOException {
    for (Path source : testSources()) {
      assertThat(IMPATIENT.matcher(Files.readString(source)).results().map(m -> m.group()))
          .as(source.toString())
          .isEmpty();
    }
  }

  private static List<Path> testSources() throws IOException {
    try (Stream<Path> files = Files.walk(REPOSITORY.resolve("service"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> file.toString().replace('\\', '/').contains("/src/test/"))
          .filter(file -> !file.endsWith("TestCommandTest.java"))
          .toList();
    }
  }

  private static String read(String name) throws IOException {
    return Files.readString(REPOSITORY.resolve(name));
  }
}
