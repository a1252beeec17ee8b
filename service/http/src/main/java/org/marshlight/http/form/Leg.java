package org.marshlight.http.form;

import io.quarkus.qute.RawString;
import java.util.List;
import org.marshlight.http.words.Texts;

/**
 * A step of the flow: what is asked, and which parts of the report answer it.
 *
 * @param id stable name
 * @param number place in the flow, from 1
 * @param items what is asked
 * @param answers ids of the parts of the report that stand beside it
 */
public record Leg(String id, int number, List<Item> items, List<String> answers) {

  /** Its name. */
  public RawString titleIn(Texts texts) {
    return texts.html("leg." + id);
  }

  /** Why it matters, in a sentence. */
  public RawString aboutIn(Texts texts) {
    return texts.html("leg." + id + ".about");
  }
}
