package org.marshlight.http.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.regex.Pattern;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.parameters.RequestBody;
import org.marshlight.contract.WireName;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.words.UnitSystem;

/** What requests hold: bodies with the samples as examples, and parameters. */
final class Requests {

  private static final int LONGEST_ID = 200;
  private static final int LONGEST_HEADER = 4000;
  private static final int LONGEST_WEATHER_FILE = 4 * 1024 * 1024;

  private Requests() {}

  /** A body with every sample of its route that is served. */
  static RequestBody body(String path, Schema schema) {
    MediaType json = OASFactory.createMediaType().schema(schema);
    Pattern route = Pattern.compile(path.replaceAll("\\{[^}]*}", "[^/]+"));
    for (Sample sample : Sample.all()) {
      if (sample.status() == 200
          && !sample.body().isEmpty()
          && route.matcher(sample.route()).matches()) {
        json.addExample(
            sample.name(),
            OASFactory.createExample().summary(sample.about()).value(value(sample.body())));
      }
    }
    return OASFactory.createRequestBody()
        .required(true)
        .content(OASFactory.createContent().addMediaType("application/json", json));
  }

  /** The text of a weather file. */
  static RequestBody weatherFile() {
    MediaType text =
        OASFactory.createMediaType()
            .schema(text(LONGEST_WEATHER_FILE))
            .addExample(
                "epw-cut-off",
                OASFactory.createExample()
                    .summary("How such a file begins; a whole one has 8760 hours")
                    .value("LOCATION,Invented demo basin,-,-,invented,000000,44.0,10.0,1.0,120.0"));
    return OASFactory.createRequestBody()
        .required(true)
        .description("Plain ASCII text of one ordinary year, hour by hour, in EPW or TMY3 form.")
        .content(OASFactory.createContent().addMediaType("text/plain", text));
  }

  static Parameter working() {
    return flag("working", "Whether each stage shows the steps of its working.", false);
  }

  static Parameter hours() {
    return flag("hours", "Whether the hours are answered beside the monthly normals.", true);
  }

  private static Parameter flag(String name, String meaning, boolean usual) {
    return OASFactory.createParameter()
        .name(name)
        .in(Parameter.In.QUERY)
        .description(meaning + " If not given: " + usual + ".")
        .schema(OASFactory.createSchema().addType(SchemaType.BOOLEAN).defaultValue(usual));
  }

  static Parameter costOnly() {
    return flag("costOnly", "Whether only the cost is reported and nothing is run.", false);
  }

  static Parameter units() {
    Schema systems =
        OASFactory.createSchema()
            .addType(SchemaType.STRING)
            .defaultValue(WireName.of(UnitSystem.SI));
    UnitSystem.names().forEach(systems::addEnumeration);
    return OASFactory.createParameter()
        .name(Reader.UNITS)
        .in(Parameter.In.QUERY)
        .description(
            "Units of tables and reports; an answer in JSON is always in SI. If not given: si.")
        .schema(systems);
  }

  static Parameter id(String catalogue) {
    return OASFactory.createParameter()
        .name("id")
        .in(Parameter.In.PATH)
        .required(true)
        .description("An id that /v1/" + catalogue + " lists.")
        .schema(text(LONGEST_ID));
  }

  static Parameter ifNoneMatch() {
    return OASFactory.createParameter()
        .name("If-None-Match")
        .in(Parameter.In.HEADER)
        .description("Entity tags of answers that the client has.")
        .schema(text(LONGEST_HEADER));
  }

  static Schema text(int longest) {
    return OASFactory.createSchema().addType(SchemaType.STRING).maxLength(longest);
  }

  private static Map<String, Object> value(String body) {
    try {
      return new ObjectMapper().readValue(body, new TypeReference<>() {});
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a sample that is served is no JSON", e);
    }
  }
}
