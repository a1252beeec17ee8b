package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.evidence.Source;
import org.marshlight.evidence.SourceList;
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
  void aWrongWholePlanComesBackAsAPage() {
    for (String wrong : new String[] {"{\"sight\": 1}", "{"}) {
      Response response = form(wrong);
      assertThat(response.statusCode()).isEqualTo(400);
      assertThat(response.asString())
          .contains("<textarea", wrong.replace("\"", "&quot;"), "<section class=\"problems\"");
      Service.cautioned(response);
    }
    Service.refused(
        Service.asking().contentType(FORM).body("plan=%zz").post("/report"), 400, "bad-request");
  }

  @Test
  void aWrongFieldOfAFormIsToldBesideItAndTheEntriesAreKept() {
    Response response =
        fields(
            Map.of(
                "/name", "Invented: by the weir",
                "/site/climate/id", "christchurch",
                "/people/count", "7",
                "has:/tank", "1",
                "/tank/liquidVolumeM3", "6,5",
                "/tank/liquidDepthM", "1,000",
                "/money/discountRate", "0,03"));
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.contentType()).isEqualToIgnoringCase("text/html;charset=UTF-8");
    Service.cautioned(response);
    String page = response.asString();
    assertThat(page)
        .contains("value=\"Invented: by the weir\"")
        .contains("name=\"/people/count\" value=\"7\"")
        .contains("name=\"/tank/liquidDepthM\" value=\"1,000\" aria-invalid=\"true\"")
        .contains("name=\"/tank/liquidVolumeM3\" value=\"6.5\"")
        .contains("<a href=\"#f-tank-liquidDepthM\">Liquid depth: &quot;1,000&quot; can be read")
        .contains("<option value=\"christchurch\" selected>")
        // a part that is not ticked keeps its entries and stays unticked
        .contains("name=\"/money/discountRate\" value=\"0.03\"")
        .contains("name=\"has:/money\" value=\"1\">")
        .contains("name=\"has:/tank\" value=\"1\" checked>")
        .doesNotContain("<script");
  }

  @Test
  void aStationInAFormReplacesThePlaceThatTheFormShowedAtFirst() {
    Map<String, String> fields = new HashMap<>();
    // what the form shows at first, which is the place of the demo
    fields.put("/site/latitudeDeg", "46.6");
    fields.put("/site/longitudeDeg", "14.3");
    fields.put("/site/elevationM", "620");
    fields.put("/site/climate/monthly/windMS/0", "1.6");
    fields.put("/site/climate/id", "christchurch");
    fields.put("/people/count", "4");
    fields.put("has:/tank", "1");
    String changed = fields(fields).asString();
    fields.keySet().removeIf(name -> name.startsWith("/site") && !name.endsWith("/id"));
    assertThat(withoutStamp(changed)).isEqualTo(withoutStamp(fields(fields).asString()));
    assertThat(changed).contains("data-part=\"warmth\"");
  }

  private static String withoutStamp(String report) {
    return report.replaceAll("<footer>(?s:.*?)</footer>", "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loop-hill-smallholding",
        "loop-cold-holiday-house",
        "loop-warm-farm",
        "loop-canteen-scraps",
        "loop-garden-school"
      })
  void aReportShowsWordsAndNoIds(String sample) throws Exception {
    String plan = Files.readString(Service.SAMPLES.resolve(sample + ".json"));
    String report = form(plan).asString();
    assertThat(report).doesNotContain("Stable name");
    Set<String> sources =
        SourceList.standard().all().stream().map(Source::id).collect(Collectors.toSet());
    assertThat(
            Pattern.compile("<t[hd][^>]*>([a-z]+(?:[.-][a-z0-9]+)+)</t[hd]>")
                .matcher(report)
                .results()
                .map(cell -> cell.group(1))
                .filter(cell -> !sources.contains(cell)))
        .isEmpty();
  }

  @Test
  void aUsualValueWithoutARangeIsGivenNone() {
    String page = Service.asking().get("/").asString();
    assertThat(page).containsPattern("Usual: [^,<]+, mostly ");
    assertThat(
            Pattern.compile("mostly ([^<]*?) to ([^<]*?) \\([^()]*, [^()]*\\)</p>")
                .matcher(page)
                .results()
                .filter(hint -> hint.group(1).equals(hint.group(2)))
                .map(hint -> hint.group()))
        .isEmpty();
  }

  @Test
  void aFaultOfSeveralFieldsNamesThemByTheirLabels() {
    Map<String, String> fields = new HashMap<>();
    fields.put("/site/climate/id", "christchurch");
    fields.put("/people/count", "4");
    fields.put("has:/tank", "1");
    fields.put("has:/gas", "1");
    fields.put("/gas/uses/0/use", "cooking");
    fields.put("/gas/uses/0/hoursPerDay", "2");
    fields.put("/gas/uses/0/mealsPerDay", "2");
    String page = fields(fields).asString();
    assertThat(page)
        .containsPattern("<a href=\"#f-gas-uses\">Give either &quot;[A-Z][a-z ]+&quot; or &quot;")
        .doesNotContain("hoursPerDay and", "hoursPerDay or");
  }

  @Test
  void aRangeIsToldByTheLabelOfItsField() {
    String page =
        fields(
                Map.of(
                    "/site/climate/id",
                    "burlington",
                    "has:/tank",
                    "1",
                    "/people/count",
                    "2",
                    "/tank/liquidVolumeM3",
                    "600000"))
            .asString();
    assertThat(page)
        .contains("Liquid volume must be from 0.2 to 500\u00a0m\u00b3.")
        .doesNotContain("liquidVolumeM3 must");
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

  private static Response fields(Map<String, String> fields) {
    String form =
        fields.entrySet().stream()
            .map(
                field ->
                    URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8)
                        + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    return Service.asking().contentType(FORM).body(form).post("/report");
  }

  private static Response form(String plan) {
    String form = "plan=" + URLEncoder.encode(plan, StandardCharsets.UTF_8);
    return Service.asking().contentType(FORM).body(form).post("/report");
  }
}
