package org.marshlight.contract;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * One thing that is wrong in a request.
 *
 * @param rejected what was sent, cut to {@value #LONGEST_ECHO} characters; null if nothing was
 */
@Meaning("One thing that is wrong in a request.")
public record Fault(
    @NotNull @Meaning("Stable name of the kind of fault.") @Size(max = 100) String code,
    @NotNull
        @Meaning("RFC 6901 pointer of the field at fault; empty for the whole document.")
        @Size(max = 400)
        String pointer,
    @Meaning("What was sent, cut short if long; null if nothing was.") @Size(max = 100)
        String rejected,
    @NotNull @Meaning("Why it is refused.") @Size(max = 2000) String detail,
    @Meaning("What would be accepted.") @Size(max = 4000) String allowed,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  /** Longest echo of a rejected value. */
  public static final int LONGEST_ECHO = 80;

  public Fault {
    rejected = bounded(rejected);
  }

  /**
   * A fault whose detail stands under its code in the sentences of its package.
   *
   * @param rejected the value refused, or null
   */
  public static Fault of(
      String code, String pointer, Object rejected, String allowed, Object... params) {
    Map<String, Object> named = Params.of(params);
    String echo = rejected == null ? null : String.valueOf(rejected);
    return new Fault(code, pointer, echo, Sentences.text(code, named), allowed, named);
  }

  /**
   * A fault of a name that is not known; its detail offers the one that was probably meant.
   *
   * @param rejected what was sent
   * @param name the unknown name
   * @param known the names that are known
   * @param params further parameters of the text
   */
  public static Fault unknown(
      String code,
      String pointer,
      Object rejected,
      String name,
      Collection<String> known,
      String allowed,
      Object... params) {
    List<Object> all = new ArrayList<>(Arrays.asList(params));
    all.addAll(List.of("nearest", Suggestion.closeTo(name, known).orElse("")));
    all.addAll(List.of("suggestion", Suggestion.sentence(name, known)));
    return of(code, pointer, rejected, allowed, all.toArray());
  }

  /** The same fault, seen from a document in which the faulty one stands at a prefix. */
  public Fault under(String prefix) {
    return new Fault(code, prefix + pointer, rejected, detail, allowed, params);
  }

  /** The same fault, seen from the part of the document at a prefix of its pointer. */
  public Fault below(String prefix) {
    return new Fault(code, pointer.substring(prefix.length()), rejected, detail, allowed, params);
  }

  private static String bounded(String text) {
    if (text == null || text.length() <= LONGEST_ECHO) {
      return text;
    }
    boolean splitsPair = Character.isHighSurrogate(text.charAt(LONGEST_ECHO - 1));
    return text.substring(0, splitsPair ? LONGEST_ECHO - 1 : LONGEST_ECHO) + "...";
  }
}
