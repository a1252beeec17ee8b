package org.marshlight.http.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.http.form.Item.Entry;
import org.marshlight.http.form.Item.Kind;
import org.marshlight.http.form.Item.Option;
import org.marshlight.http.form.Item.Place;
import org.marshlight.http.form.Item.Units;
import org.marshlight.http.form.Item.Value;
import org.marshlight.http.form.Item.Wrong;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitBook;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.loop.Plan;

/** Builds the form of a plan from the plan's own records. */
public final class FormBuilder {

  private final Texts texts;
  private final FieldHelp helps;
  private final FaultWords faultWords;
  private final FormState state;
  private final JsonNode plan;

  private FormBuilder(Texts texts, FormState state) {
    this.texts = texts;
    this.helps = new FieldHelp(texts);
    this.faultWords = new FaultWords(texts);
    this.state = state;
    this.plan = state.plan();
  }

  /**
   * The steps of the form.
   *
   * @param texts texts in the reader's language
   * @param state what it shows
   */
  public static List<Leg> legs(Texts texts, FormState state) {
    FormBuilder builder = new FormBuilder(texts, state);
    List<Leg> legs = new ArrayList<>();
    for (FormOutline.Step step : FormOutline.steps()) {
      List<Item> items = new ArrayList<>();
      for (String root : step.asks()) {
        RecordShape.of(Plan.class)
            .field(root)
            .ifPresent(field -> items.add(builder.item(field, "", "")));
      }
      legs.add(new Leg(step.leg(), legs.size() + 1, items, step.answers()));
    }
    return List.copyOf(legs);
  }

  /**
   * @param owner dotted path of the record, without the places in lists
   * @param pointer pointer to the record
   */
  private Item item(RecordShape.Field field, String owner, String pointer) {
    String path = owner.isEmpty() ? field.name() : owner + "." + field.name();
    String at = pointer + "/" + field.name();
    Kind kind = FieldKind.of(field, path);
    String key = "field." + path;
    String label = texts.has(key) ? texts.plain(key) : field.meaning();
    List<Item> main = new ArrayList<>();
    List<Item> finer = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    if (kind == Kind.GROUP || kind == Kind.SECTION) {
      share(field.type().asSubclass(Record.class), path, at, main, finer);
    } else if (kind == Kind.LIST) {
      entries(field, path, at, entries);
    }
    boolean leaf = main.isEmpty() && finer.isEmpty() && entries.isEmpty();
    return new Item(
        kind,
        at,
        label,
        leaf ? helps.of(field, path) : null,
        units(field, path),
        options(field, kind),
        value(field, kind, at),
        leaf || kind == Kind.LIST ? faults(kind, at, label, leaf) : List.of(),
        main,
        finer,
        entries);
  }

  /** What is wrong with a field and all below it, or with a list or an entry of it as such. */
  private List<Wrong> faults(Kind kind, String pointer, String label, boolean below) {
    return state.faults().stream()
        .filter(fault -> isAbout(fault.pointer(), pointer, below))
        .map(fault -> new Wrong(fault.pointer(), faultWords.of(fault, kind, label)))
        .toList();
  }

  private static boolean isAbout(String faulty, String pointer, boolean below) {
    if (!faulty.startsWith(pointer)) {
      return false;
    }
    String within = faulty.substring(pointer.length());
    return within.isEmpty() || (below ? within.startsWith("/") : within.matches("/\\d+"));
  }

  private void share(
      Class<? extends Record> type,
      String path,
      String pointer,
      List<Item> main,
      List<Item> finer) {
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      String inner = path + "." + field.name();
      if (!FormOutline.KEPT.contains(inner)) {
        (FormOutline.isMain(inner) ? main : finer).add(item(field, path, pointer));
      }
    }
  }

  /** The entries that the plan has, and one more as the template of new ones. */
  private void entries(RecordShape.Field field, String path, String pointer, List<Entry> entries) {
    int count = plan.at(pointer).size();
    for (int i = 0; i <= count; i++) {
      String index = i < count ? String.valueOf(i) : Item.NEW;
      List<Item> main = new ArrayList<>();
      List<Item> finer = new ArrayList<>();
      share(field.elementType().asSubclass(Record.class), path, pointer + "/" + index, main, finer);
      entries.add(new Entry(index, i < count ? String.valueOf(i + 1) : index, main, finer));
    }
  }

  private static Units units(RecordShape.Field field, String path) {
    return field
        .quantity()
        .map(
            quantity ->
                new Units(
                    UnitBook.of(quantity.unit(), path, UnitSystem.SI),
                    UnitBook.of(quantity.unit(), path, UnitSystem.US_CUSTOMARY)))
        .orElse(null);
  }

  private List<Option> options(RecordShape.Field field, Kind kind) {
    if (kind != Kind.CHOICE && kind != Kind.CHOICES) {
      return List.of();
    }
    if (field.catalogue().isPresent()) {
      return CatalogueOptions.of(field.catalogue().get());
    }
    @SuppressWarnings("unchecked")
    Class<? extends Enum<?>> choices = (Class<? extends Enum<?>>) field.elementType();
    return WireName.all(choices).stream().map(name -> new Option(name, choice(name))).toList();
  }

  private String choice(String name) {
    String key = "choice." + name;
    return texts.has(key) ? texts.plain(key) : name.replace('-', ' ');
  }

  private Value value(RecordShape.Field field, Kind kind, String pointer) {
    JsonNode node = plan.at(pointer);
    String text = node.isValueNode() && !node.isNull() ? node.asText() : "";
    return new Value(
        kind == Kind.NUMBER ? trimmed(text) : text,
        helps.usual(field),
        node.isContainerNode() && !state.absent().contains(pointer),
        field.required(),
        places(field, kind, node));
  }

  private List<Place> places(RecordShape.Field field, Kind kind, JsonNode node) {
    return switch (kind) {
      case TWELVE ->
          IntStream.range(0, 12)
              .mapToObj(i -> place(i, texts.plain("month." + (i + 1)), node))
              .toList();
      case SECTORS ->
          IntStream.range(0, 12).mapToObj(i -> place(i, 30 * i + "\u00b0", node)).toList();
      case MONTHS ->
          IntStream.rangeClosed(1, 12)
              .mapToObj(
                  m ->
                      new Place(
                          String.valueOf(m),
                          texts.plain("month." + m),
                          "",
                          StreamSupport.stream(node.spliterator(), false)
                              .anyMatch(value -> value.asInt() == m)))
              .toList();
      case CHOICES ->
          options(field, kind).stream()
              .map(
                  option ->
                      new Place(
                          option.value(),
                          option.label(),
                          "",
                          StreamSupport.stream(node.spliterator(), false)
                              .anyMatch(value -> value.asText().equals(option.value()))))
              .toList();
      default -> List.of();
    };
  }

  private static Place place(int index, String label, JsonNode node) {
    JsonNode value = node.path(index);
    return new Place(
        String.valueOf(index), label, value.isNumber() ? trimmed(value.asText()) : "", false);
  }

  /** 6.0 is typed as 6. */
  private static String trimmed(String number) {
    return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
  }
}
