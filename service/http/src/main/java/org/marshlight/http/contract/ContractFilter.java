package org.marshlight.http.contract;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.marshlight.Answer;
import org.marshlight.CatalogueAnswer;
import org.marshlight.FormulaAnswer;
import org.marshlight.Meta;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.catalogues.Catalogue;
import org.marshlight.http.formulas.FormulaRequest;
import org.marshlight.loop.Plan;

/**
 * Completes what the scan of the routes finds: the schemas of everything sent and answered, the
 * responses of every operation, examples, and one path for each catalogue.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ContractFilter implements OASFilter {

  private static final String CATALOGUE = "{catalogue}";

  @Override
  public void filterOpenAPI(OpenAPI document) {
    RecordSchemas schemas = new RecordSchemas();
    Responses responses = new Responses(schemas);
    describe(document);
    Map<String, PathItem> paths = new TreeMap<>();
    document
        .getPaths()
        .getPathItems()
        .forEach(
            (path, item) -> {
              if (path.contains(CATALOGUE)) {
                Catalogue.all()
                    .forEach(catalogue -> add(paths, path, item, catalogue, responses, schemas));
              } else {
                worked(path, item.getPOST(), responses, schemas);
                merge(paths, path, item);
              }
            });
    document.setPaths(OASFactory.createPaths());
    paths.forEach(document.getPaths()::addPathItem);
    document.setComponents(
        OASFactory.createComponents()
            .schemas(schemas.components())
            .responses(responses.components())
            .headers(responses.headers()));
  }

  private static void describe(OpenAPI document) {
    document.setInfo(
        OASFactory.createInfo()
            .title("Marshlight")
            .version(Meta.VERSION)
            .summary("What a sun-warmed tank, its planted beds and the heap give back over a year")
            .description(
                "One plan in, one honest estimate out. Estimates are for planning: no design and no"
                    + " permit; local codes and licensed practice decide. Fields that are null are"
                    + " taken as absent. Units are UCUM codes under x-unit; {unit} means that the"
                    + " unit stands in the field `unit` beside the number.")
            .contact(OASFactory.createContact().name("The makers of Marshlight"))
            .license(OASFactory.createLicense().name("Apache-2.0").identifier("Apache-2.0")));
    document.setServers(List.of(OASFactory.createServer().url("/").description("This service")));
    document.setSecurity(List.of());
    document.setTags(
        List.of(
            OASFactory.createTag().name("estimates").description("What a plan gives."),
            OASFactory.createTag().name("formulas").description("Single steps, worked again."),
            OASFactory.createTag()
                .name("catalogues")
                .description("What the engine knows, with sources.")));
  }

  private static void worked(
      String path, Operation operation, Responses responses, RecordSchemas schemas) {
    boolean formula = path.contains("/formulas/");
    operation.setRequestBody(
        Requests.body(path, schemas.sent(formula ? FormulaRequest.class : Plan.class)));
    operation.setParameters(List.of(formula ? Requests.id("formulas") : Requests.working()));
    operation.setResponses(
        formula
            ? responses.json(schemas.answered(FormulaAnswer.class), 400, 404, 406, 413, 415, 500)
            : responses.estimate(schemas.answered(Answer.class, PlanEstimate.class, "PlanAnswer")));
  }

  private static void add(
      Map<String, PathItem> paths,
      String path,
      PathItem item,
      Catalogue catalogue,
      Responses responses,
      RecordSchemas schemas) {
    boolean one = path.endsWith("{id}");
    String capital =
        catalogue.name().substring(0, 1).toUpperCase(Locale.ROOT) + catalogue.name().substring(1);
    Operation operation =
        OASFactory.createOperation()
            .operationId((one ? "findIn" : "list") + capital)
            .summary(one ? "One of the " + catalogue.name() : catalogue.about())
            .tags(item.getGET().getTags())
            .responses(
                responses.catalogue(
                    schemas.answered(
                        CatalogueAnswer.class, catalogue.itemType(), capital + "Answer"),
                    one));
    if (one) {
      operation.addParameter(Requests.id(catalogue.name()));
    }
    operation.addParameter(Requests.ifNoneMatch());
    String at = path.replaceFirst("\\{catalogue[^}]*}", catalogue.name());
    merge(paths, at, OASFactory.createPathItem().GET(operation));
  }

  private static void merge(Map<String, PathItem> paths, String path, PathItem item) {
    PathItem whole = paths.computeIfAbsent(path, p -> OASFactory.createPathItem());
    item.getOperations().forEach(whole::setOperation);
  }
}
