package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.http.problems.ProblemKind;

/** The pages for people: complete without scripts, and without a request to anyone else. */
@QuarkusTest
class PagesTest {

  private static final String FORM = "application/x-www-form-urlencoded; charset=utf-8";

  @Test
  void theFirstPageOffersThePlanToTry() {
    String page = Service.asking().get("/").asString();
    assertThat(page)
        .contains("<form method=\"post\" action=\"/report\">")
        .contains("&quot;name&quot;: &quot;Invented demo: hill smallholding")
        .contains("href=\"/v1/climates\"", "href=\"/q/openapi\"", "href=\"/problems\"")
        .contains("local codes and licensed practice decide");
    assertThat(page.indexOf("What can hurt?")).isBetween(0, page.indexOf("<form"));
  }

  @Test
  void theFormGivesTheReportOfThePlanSent() {
    Response response = form(Service.contractPlan());
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    assertThat(response.contentType()).isEqualTo("text/html; charset=utf-8");
    String page = response.asString();
    int cautions = page.indexOf("What can hurt?");
    int verdicts = page.indexOf("Worth building?");
    assertThat(cautions).isPositive().isLessThan(verdicts);
    assertThat(page)
        .contains("<h1>Invented demo: hill smallholding, four people, goats and hens</h1>")
        .contains("How warm? How much gas?", "What was taken as given?", "Does it add up?")
        .contains("<th scope=\"col\">Dec</th>")
        .contains("This report is no design")
        .doesNotContain("<details");
    Service.cautioned(response);
  }

  @Test
  void whatAPlanSaysIsNeverTakenForMarkup() {
    String plan =
        "{\"name\": \"<script>alert('x')</script>&\\\"\", \"site\": {\"climate\": {\"id\":"
            + " \"burlington\"}}, \"people\": {}, \"tank\": {}}";
    assertThat(form(plan).asString())
        .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;&quot;")
        .doesNotContain("<script");
  }

  @Test
  void aWrongPlanInTheFormIsToldAsAnywhere() {
    Service.refused(form("{\"sight\": 1}"), 400, "wrong-fields");
    Service.refused(form("{"), 400, "malformed-json");
    Service.refused(
        Service.asking().contentType(FORM).body("plan=%zz").post("/report"), 400, "bad-request");
  }

  @Test
  void aFormMayBeAsLongAsAnyPlan() {
    String padded = Service.contractPlan() + " ".repeat(200_000);
    assertThat(form(padded).statusCode()).isEqualTo(200);
  }

  @Test
  void everyKindOfProblemHasItsPlaceOnThePage() {
    String page = Service.asking().get("/problems").asString();
    for (ProblemKind kind : ProblemKind.values()) {
      assertThat(page).contains("<tr id=\"" + kind.code() + "\">", kind.title());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/problems"})
  void theStyleIsTheOneThatThePolicyNamesAndNothingComesFromElsewhere(String path)
      throws Exception {
    Response response = Service.asking().get(path);
    Matcher style =
        Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL).matcher(response.asString());
    assertThat(style.find()).isTrue();
    byte[] digest =
        MessageDigest.getInstance("SHA-256")
            .digest(style.group(1).getBytes(StandardCharsets.UTF_8));
    assertThat(response.header("Content-Security-Policy"))
        .contains("style-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
    assertThat(response.asString())
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContain("<script");
  }

  private static Response form(String plan) {
    String form = "plan=" + URLEncoder.encode(plan, StandardCharsets.UTF_8);
    return Service.asking().contentType(FORM).body(form).post("/report");
  }
}
