package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clients of {@code docs/http.md}, each run as a reader would run it. */
@QuarkusTest
class DocumentedClientsTest {

  private static final Path REPOSITORY = Path.of(System.getProperty("repository"));
  private static final Pattern CLIENT = Pattern.compile("```(\\w+)\\n(.*?)```", Pattern.DOTALL);

  @TestHTTPResource URL home;

  @TempDir Path folder;

  @Test
  void curlGetsTheAnswerAndTheTable() throws Exception {
    List<String> clients = clients("bash");
    JsonNode answer = Service.JSON.readTree(run(List.of("bash", "-c", clients.get(0))));
    assertThat(answer).isEqualTo(expected());
    assertThat(run(List.of("bash", "-c", clients.get(1))))
        .startsWith("kind,id,month,value,unit,text\r\n")
        .contains("[degF]");
  }

  @Test
  void pythonReadsTheAnswerAndFollowsAStudy() throws Exception {
    List<String> clients = clients("python");
    assertThat(run("python3", "client.py", clients.get(0))).isEqualTo(told());
    assertThat(run("python3", "study.py", clients.get(1)))
        .contains(" of ")
        .contains("digester.meanLiquorTemperatureC ");
  }

  @Test
  void javaScriptReadsTheAnswer() throws Exception {
    assertThat(run("node", "client.mjs", clients("javascript").get(0))).isEqualTo(told());
  }

  @Test
  void javaReadsTheTable() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String[] lines = told().split("\n");
    assertThat(run(java, "Client.java", clients("java").get(0)).replace("\r", ""))
        .isEqualTo("methane-explosion\n" + lines[1] + "\n" + lines[2] + "\n");
  }

  /** What the clients print, from the answer itself. */
  private static String told() {
    JsonNode answer = expected();
    JsonNode year = answer.at("/estimate/digester/annual");
    String glass = "";
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      if (verdict.path("component").asText().equals("glass")) {
        glass = verdict.path("answer").asText();
      }
    }
    return String.format(
        Locale.ROOT,
        "%s\n%.2f Cel\n%.2f kWh\nglass: %s\n",
        answer.at("/cautions/0/hazard").asText(),
        year.path("meanLiquorTemperatureC").asDouble(),
        year.path("gasEnergyKWh").asDouble(),
        glass);
  }

  private static JsonNode expected() {
    return Service.json(Service.post("/v1/estimates/loop", Service.contractPlan()));
  }

  /** The clients in a language, asking this service in place of the reader's. */
  private List<String> clients(String language) throws IOException {
    String page = Files.readString(REPOSITORY.resolve("docs/http.md"));
    List<String> clients = new ArrayList<>();
    Matcher client = CLIENT.matcher(page);
    while (client.find()) {
      if (client.group(1).equals(language)) {
        String here = home.toString().replaceAll("/$", "");
        clients.add(client.group(2).replace("http://localhost:8080", here));
      }
    }
    return clients;
  }

  private String run(String program, String file, String client) throws Exception {
    Path written = Files.writeString(folder.resolve(file), client);
    return run(List.of(program, written.toString()));
  }

  private String run(List<String> command) throws Exception {
    Path printed = folder.resolve("printed");
    Process process;
    try {
      process =
          new ProcessBuilder(command)
              .directory(REPOSITORY.toFile())
              .redirectErrorStream(true)
              .redirectOutput(printed.toFile())
              .start();
    } catch (IOException e) {
      throw new IllegalStateException(
          "The documented clients are run in their own languages, and there is no "
              + command.get(0)
              + " here. Install it, or run .ci/run, which does.",
          e);
    }
    assertThat(process.waitFor(Patience.LONGEST.toMinutes(), TimeUnit.MINUTES)).isTrue();
    String text = Files.readString(printed, StandardCharsets.UTF_8);
    assertThat(process.exitValue()).as(text).isZero();
    return text;
  }
}
