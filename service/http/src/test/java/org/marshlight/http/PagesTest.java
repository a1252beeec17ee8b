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
  void theFirstPageShowsThePlanItsDangersAndItsAnswer() {
    String page = Service.asking().get("/").asString();
    assertThat(page)
        .contains("<form id=\"plan-form\" method=\"post\" action=\"/report\"")
        .contains("value=\"Invented demo: hill smallholding, four people, goats and hens\"")
        .contains("href=\"/v1/climates\"", "href=\"/q/openapi\"", "href=\"/problems\"")
        .contains("local codes and licensed practice decide");
    assertInOrder(
        page, "What can kill?", "What comes of it, in short?", "How warm?", "Worth building?");
  }

  @Test
  void theFormGivesTheReportOfThePlanSent() {
    Response response = form(Service.contractPlan());
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    assertThat(response.contentType()).isEqualTo("text/html; charset=utf-8");
    String page = response.asString();
    assertInOrder(
        page,
        "<h1>Invented demo: hill smallholding, four people, goats and hens</h1>",
        "What can kill?",
        "Worth building?",
        "What does it come to in money?",
        "Does it warm the climate?",
        "What falls in which month?",
        "What will a permit officer ask?",
        "What was planned?",
        "What does this not know?",
        "What was taken as given?",
        "Who says so?",
        "This report is no design");
    assertThat(page).contains("<th scope=\"col\">Dec</th>").doesNotContain("<details");
    Service.cautioned(response);
  }

  @Test
  void theReportIsToldInTheUnitsAskedForButJsonIsAlwaysSi() {
    String plan = Service.contractPlan();
    String path = "/v1/estimates/loop?units=us-customary";
    assertThat(estimate(path, "text/html", plan).asString()).contains("\u00a0\u00b0F", " gal");
    assertThat(estimate(path, "text/csv", plan).asString())
        .contains("digester.annual.meanLiquorTemperatureC,,", "[degF]");
    Service.refused(estimate(path, "application/json", plan), 400, "bad-request");
    Service.refused(
        estimate("/v1/estimates/loop?units=cubits", "text/html", plan), 400, "bad-request");
  }

  @Test
  void aLanguageWithoutATranslationReadsEnglishMarkedAsSuch() {
    Response response = Service.asking().header("Accept-Language", "nb, en;q=0.5").get("/");
    assertThat(response.asString()).contains("<html lang=\"en\">", "What can kill?");
    assertThat(response.header("Vary")).contains("Accept-Language");
  }

  @Test
  void whatATranslationLacksIsSaidInEnglish() {
    Response response = Service.asking().header("Accept-Language", "eo").get("/");
    assertThat(response.asString())
        .contains("<html lang=\"eo\">", "Kio povas mortigi?", "fajro kaj eksplodo")
        .contains("<span lang=\"en\">Gas from a tank burns and explodes")
        .contains("<span lang=\"en\">infection</span>");
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
        .contains("'sha256-" + Base64.getEncoder().encodeToString(digest) + "'")
        .doesNotContain("unsafe");
    assertThat(response.asString())
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContainPattern("<script(?! type=\"(module\" src=\"/page/|application/json\" id=))");
  }

  private static void assertInOrder(String page, String... texts) {
    int at = 0;
    for (String text : texts) {
      int found = page.indexOf(text, at);
      assertThat(found).as(text).isNotNegative();
      at = found;
    }
  }

  private static Response estimate(String path, String accept, String plan) {
    return Service.asking()
        .contentType("application/json")
        .header("Accept", accept)
        .body(plan)
        .post(path);
  }

  private static Response form(String plan) {
    String form = "plan=" + URLEncoder.encode(plan, StandardCharsets.UTF_8);
    return Service.asking().contentType(FORM).body(form).post("/report");
  }
}
