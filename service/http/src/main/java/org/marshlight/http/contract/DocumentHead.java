package org.marshlight.http.contract;

import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.tags.Tag;
import org.marshlight.Meta;

/** What the OpenAPI document says of the service as a whole. */
final class DocumentHead {

  private DocumentHead() {}

  static void put(OpenAPI document) {
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
            .contact(OASFactory.createContact().name("The makers of Marshlight")));
    document.setServers(List.of(OASFactory.createServer().url("/").description("This service")));
    document.setSecurity(List.of());
    document.setTags(
        List.of(
            tag("estimates", "What a plan gives."),
            tag("studies", "How sure, what matters, how big, what if."),
            tag("formulas", "Single steps, worked again."),
            tag("catalogues", "What the engine knows, with sources.")));
  }

  private static Tag tag(String name, String description) {
    return OASFactory.createTag().name(name).description(description);
  }
}
