package org.marshlight.http.estimates;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.MessageBodyWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import org.marshlight.Answer;

/** A form other than JSON in which an answer is written: all of it as one text in UTF-8. */
public abstract class AnswerForm implements MessageBodyWriter<Answer<?>> {

  private final String contentType;

  /**
   * @param contentType media type with its parameters
   */
  protected AnswerForm(String contentType) {
    this.contentType = contentType;
  }

  /** The whole answer. */
  protected abstract String text(Answer<?> answer) throws IOException;

  @Override
  public final boolean isWriteable(
      Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
    return type == Answer.class;
  }

  @Override
  public final void writeTo(
      Answer<?> answer,
      Class<?> type,
      Type genericType,
      Annotation[] annotations,
      MediaType mediaType,
      MultivaluedMap<String, Object> headers,
      OutputStream stream)
      throws IOException {
    headers.putSingle(HttpHeaders.CONTENT_TYPE, contentType);
    stream.write(text(answer).getBytes(StandardCharsets.UTF_8));
  }
}
