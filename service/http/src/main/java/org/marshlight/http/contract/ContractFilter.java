package org.marshlight.http.contract;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.marshlight.http.catalogues.Catalogue;

/**
 * Completes what the scan of the routes finds: the schemas of everything sent and answered, the
 * responses of every operation, examples, and one path for each catalogue.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ContractFilter implements OASFilter {

  private static final String CATALOGUE = "{catalogue}";

  @Override
  public void filterOpenAPI(OpenAPI document) {
    DocumentHead.put(document);
    Operations operations = new Operations();
    Map<String, PathItem> paths = new TreeMap<>();
    document
        .getPaths()
        .getPathItems()
        .forEach(
            (path, item) -> {
              if (path.contains(CATALOGUE)) {
                catalogues(paths, path, item.getGET(), operations);
              } else {
                complete(path, item.getPOST(), operations);
                add(paths, path, item);
              }
            });
    document.setPaths(OASFactory.createPaths());
    paths.forEach(document.getPaths()::addPathItem);
    document.setComponents(operations.shared());
  }

  private static void complete(String path, Operation operation, Operations operations) {
    if (path.startsWith("/v1/estimates/")) {
      operations.estimate(path, operation);
    } else if (path.startsWith("/v1/studies/")) {
      operations.study(path, operation);
    } else if (path.endsWith("/from-weather-file")) {
      operations.weatherFile(operation);
    } else {
      operations.formula(path, operation);
    }
  }

  private static void catalogues(
      Map<String, PathItem> paths, String path, Operation scanned, Operations operations) {
    for (Catalogue catalogue : Catalogue.all()) {
      Operation operation =
          path.endsWith("{id}") ? operations.one(catalogue) : operations.list(catalogue);
      operation.setTags(scanned.getTags());
      add(
          paths,
          path.replace(CATALOGUE, catalogue.name()),
          OASFactory.createPathItem().GET(operation));
    }
  }

  private static void add(Map<String, PathItem> paths, String path, PathItem item) {
    PathItem whole = paths.computeIfAbsent(path, p -> OASFactory.createPathItem());
    item.getOperations().forEach(whole::setOperation);
  }
}
