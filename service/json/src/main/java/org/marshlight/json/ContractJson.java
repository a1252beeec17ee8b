package org.marshlight.json;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.marshlight.contract.WireName;
import org.marshlight.decision.PlanEstimate;

/**
 * The one way in which answers are written: names in the order of the record, choices under their
 * wire names, numbers by the writer's own shortest form and so the same on every JDK, maps sorted
 * by key. A number that is not finite is never written: writing fails. Nulls are written, but the
 * parts of an estimate that a plan does not have are left out.
 */
public final class ContractJson {

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build())
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .addMixIn(PlanEstimate.class, AbsentWhereNull.class)
          .addModule(module())
          .build();

  private ContractJson() {}

  private static SimpleModule module() {
    return new SimpleModule("marshlight")
        .addSerializer(new ChoiceWriter())
        .addSerializer(Double.class, new FiniteWriter())
        .addSerializer(double.class, new FiniteWriter());
  }

  /** The mapper that writes answers. */
  public static ObjectMapper mapper() {
    return MAPPER;
  }

  /**
   * An answer as bytes in UTF-8.
   *
   * @throws UncheckedIOException if a number of the answer is not finite
   */
  public static byte[] write(Record answer) {
    try {
      return MAPPER.writeValueAsBytes(answer);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  @JsonInclude(JsonInclude.Include.NON_NULL)
  private interface AbsentWhereNull {}

  /** Writes numbers; what is not finite is no number in JSON, and would be a fault of a model. */
  private static final class FiniteWriter extends StdSerializer<Double> {

    private static final long serialVersionUID = 1L;

    FiniteWriter() {
      super(Double.class);
    }

    @Override
    public void serialize(Double number, JsonGenerator generator, SerializerProvider provider)
        throws IOException {
      if (!Double.isFinite(number)) {
        throw JsonMappingException.from(generator, number + " is no number of an answer");
      }
      generator.writeNumber(number);
    }
  }

  /** Writes choices under their wire names. */
  private static final class ChoiceWriter extends StdSerializer<Enum<?>> {

    private static final long serialVersionUID = 1L;

    ChoiceWriter() {
      super(Enum.class, false);
    }

    @Override
    public void serialize(Enum<?> choice, JsonGenerator generator, SerializerProvider provider)
        throws IOException {
      generator.writeString(WireName.of(choice));
    }
  }
}
