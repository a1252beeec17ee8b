package org.marshlight.http.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.marshlight.http.words.Texts;

/**
 * Every field of a plan is asked in words of the page's own, with a hint where to find its value.
 */
class FormWordsTest {

  private static final Texts TEXTS = Texts.in(Locale.ENGLISH);

  @Test
  void everyFieldHasANameAndAHint() {
    List<String> wanting = new ArrayList<>();
    FormBuilder.legs(TEXTS, FormState.of(JsonNodeFactory.instance.objectNode())).stream()
        .flatMap(leg -> leg.items().stream())
        .flatMap(FormWordsTest::below)
        .forEach(
            item -> {
              String path =
                  item.pointer().substring(1).replaceAll("/(\\d+|__n__)", "").replace('/', '.');
              if (!TEXTS.has("field." + path)) {
                wanting.add("field." + path);
              }
              if (item.help() != null && !TEXTS.has("find." + path)) {
                wanting.add("find." + path);
              }
            });
    assertThat(wanting).isEmpty();
  }

  private static Stream<Item> below(Item item) {
    Stream<Item> entries =
        item.entries().stream()
            .flatMap(entry -> Stream.concat(entry.main().stream(), entry.finer().stream()));
    Stream<Item> inner =
        Stream.concat(entries, Stream.concat(item.main().stream(), item.finer().stream()));
    return Stream.concat(Stream.of(item), inner.flatMap(FormWordsTest::below));
  }
}
