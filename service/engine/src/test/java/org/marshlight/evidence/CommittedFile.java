package org.marshlight.evidence;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A generated file that is committed: rewritten on demand, otherwise held to what is committed. */
public final class CommittedFile {

  private CommittedFile() {}

  /**
   * Compares a committed file with what it should be, or rewrites it with {@code -Dupdate=true}.
   *
   * @param name path below the root of the repository
   * @param content what it should be
   */
  public static void expect(String name, String content) {
    Path path = Path.of(System.getProperty("repository")).resolve(name);
    try {
      if (Boolean.getBoolean("update")) {
        Files.createDirectories(path.getParent());
        Files.writeString(path, content);
        return;
      }
      String committed = Files.exists(path) ? Files.readString(path) : "";
      if (!committed.equals(content)) {
        fail(
            "%s has drifted; run: mvn verify -Dupdate=true%nfirst difference at %s",
            name, firstDifference(committed, content));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String firstDifference(String committed, String content) {
    String[] old = committed.split("\n", -1);
    String[] fresh = content.split("\n", -1);
    for (int i = 0; i < Math.max(old.length, fresh.length); i++) {
      String before = i < old.length ? old[i] : "(end of file)";
      String after = i < fresh.length ? fresh[i] : "(end of file)";
      if (!before.equals(after)) {
        return "line "
            + (i + 1)
            + System.lineSeparator()
            + "- "
            + before
            + System.lineSeparator()
            + "+ "
            + after;
      }
    }
    return "no line";
  }
}
