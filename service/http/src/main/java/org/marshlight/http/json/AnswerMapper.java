package org.marshlight.http.json;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.marshlight.json.ContractJson;

/** Has the framework write answers in the contract's own way. */
public class AnswerMapper {

  @Produces
  @Singleton
  ObjectMapper mapper() {
    return ContractJson.mapper();
  }
}
