package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Stage;

/** The sample plans of whole loops, and what the engine answers to them. */
final class SamplePlans {

  private static final Path FOLDER = Path.of(System.getProperty("repository"), "sample-requests");

  private SamplePlans() {}

  /** Names of every sample of a whole loop. */
  static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.startsWith("loop-") && !file.contains(".expected."))
          .map(file -> file.substring(0, file.indexOf('.')))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A sample as it is sent. */
  static byte[] request(String name) {
    try {
      return Files.readAllBytes(FOLDER.resolve(name + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Answer<PlanEstimate> answer(String name) {
    return answerTo(request(name));
  }

  /** What the engine answers to a plan as it is sent. */
  static Answer<PlanEstimate> answerTo(byte[] plan) {
    PlanDocument document = PlanDocument.read(plan);
    return Marshlight.estimate(
        new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
  }

  /** The same answer as the service writes it. */
  static JsonNode written(String plan) {
    try {
      return ContractJson.mapper()
          .readTree(ContractJson.write(answerTo(plan.getBytes(StandardCharsets.UTF_8))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
