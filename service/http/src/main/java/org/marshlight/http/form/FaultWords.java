package org.marshlight.http.form;

import java.util.Map;
import org.marshlight.contract.Fault;
import org.marshlight.http.form.Item.Kind;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.http.words.Words;

/** Faults as people read them beside a field: by its label, with units as people write them. */
final class FaultWords {

  private static final String TWELVE_INDEX = "^.*/(\\d{1,2})$";

  private final Texts texts;

  FaultWords(Texts texts) {
    this.texts = texts;
  }

  /**
   * A fault in words.
   *
   * @param fault the fault
   * @param kind how the field is asked
   * @param label what the form calls the field
   */
  String of(Fault fault, Kind kind, String label) {
    String named = kind == Kind.TWELVE ? withMonth(fault.pointer(), label) : label;
    Map<String, Object> params = fault.params();
    if (params.get("low") instanceof Number low
        && params.get("high") instanceof Number high
        && params.get("unit") instanceof String unit) {
      Words words = new Words(UnitSystem.SI);
      return texts.plain(
          "fault.range",
          Map.of(
              "label", named,
              "low", Words.digits(low.doubleValue()),
              "high", words.quantity(high.doubleValue(), unit, fault.pointer())));
    }
    return switch (fault.code()) {
      case "json.wrong-type" -> isNumber(kind) ? noNumber(fault, named) : named + ": " + all(fault);
      case "json.null-element", "loop.missing" ->
          texts.plain("fault.missing", Map.of("label", named));
      default -> labelled(fault, named);
    };
  }

  /** A fault as it is read where its field is not beside it. */
  String at(Fault fault) {
    return FieldKind.at(fault.pointer())
        .filter(kind -> kind != Kind.GROUP && kind != Kind.SECTION)
        .map(kind -> of(fault, kind, label(fault.pointer(), fault.pointer())))
        .orElseGet(() -> of(fault));
  }

  private String labelled(Fault fault, String label) {
    if (fault.params().get("first") instanceof String) {
      return of(fault);
    }
    return fault.params().get("field") instanceof String field && fault.detail().contains(field)
        ? all(fault).replace(field, label)
        : label + ": " + all(fault);
  }

  /** A fault that has no field of its own in the form. */
  String of(Fault fault) {
    if (fault.params().get("first") instanceof String first
        && fault.params().get("second") instanceof String second) {
      return texts.plain(
          "fault.one-of",
          Map.of(
              "first", label(fault.pointer() + "/" + first, first),
              "second", label(fault.pointer() + "/" + second, second)));
    }
    return all(fault);
  }

  private String label(String pointer, String name) {
    String key = "field." + pointer.substring(1).replaceAll("/\\d+", "").replace('/', '.');
    return texts.has(key) ? texts.plain(key) : name;
  }

  private static String all(Fault fault) {
    boolean told = fault.allowed() == null || fault.detail().contains(fault.allowed());
    return Words.sentence(
        told || fault.allowed().isEmpty()
            ? fault.detail()
            : fault.detail() + " (" + fault.allowed() + ")");
  }

  private String noNumber(Fault fault, String label) {
    String typed = fault.rejected() == null ? "" : fault.rejected().replaceAll("^\"|\"$", "");
    if (TypedNumber.isAmbiguous(typed)) {
      return texts.plain(
          "fault.thousands",
          Map.of(
              "label",
              label,
              "typed",
              typed,
              "thousands",
              typed.replace(",", ""),
              "decimal",
              typed.replace(',', '.').replaceAll("\\.?0+$", "")));
    }
    return texts.plain("fault.number", Map.of("label", label, "typed", typed));
  }

  private static boolean isNumber(Kind kind) {
    return kind == Kind.NUMBER || kind == Kind.TWELVE || kind == Kind.SECTORS;
  }

  private String withMonth(String pointer, String label) {
    if (!pointer.matches(TWELVE_INDEX)) {
      return label;
    }
    int month = Integer.parseInt(pointer.replaceAll(TWELVE_INDEX, "$1")) + 1;
    String key = "month." + month;
    return texts.has(key) ? label + ", " + texts.plain(key) : label;
  }
}
