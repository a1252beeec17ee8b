package org.marshlight.http.form;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.marshlight.http.words.Unit;

/**
 * One thing that the form asks: a field, a group of them, or a list of groups.
 *
 * @param kind how it is asked
 * @param pointer RFC 6901 pointer to it in a plan
 * @param label its name
 * @param help what to know of it; null for groups and lists
 * @param unit units of a number; null for others
 * @param options what can be chosen
 * @param value what the plan holds
 * @param faults what is wrong with it
 * @param main what is asked first in a group
 * @param finer what is asked only of those who look for it
 * @param entries the groups that a list holds
 */
public record Item(
    Kind kind,
    String pointer,
    String label,
    Help help,
    Units unit,
    List<Option> options,
    Value value,
    List<Wrong> faults,
    List<Item> main,
    List<Item> finer,
    List<Entry> entries) {

  /** Place of an entry that is not there yet, in the pointers of a list's template. */
  static final String NEW = "__n__";

  /** How a thing is asked. */
  public enum Kind {
    NUMBER,
    TEXT,
    CHOICE,
    /** Yes, no or left open. */
    FLAG,
    /** Months of the year, ticked. */
    MONTHS,
    /** Twelve numbers, a month each. */
    TWELVE,
    /** Twelve numbers, a sector of the horizon each. */
    SECTORS,
    /** Some of several choices, ticked. */
    CHOICES,
    /** Fields that belong together and are there whenever one of them is filled. */
    GROUP,
    /** Fields that belong together and are there if the plan has the thing. */
    SECTION,
    LIST,
    /** Numbers by the id of a coefficient. */
    OVERRIDES
  }

  /** Name of the template that shows it. */
  public String shape() {
    return kind.name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Id of its element, free of what a selector would take for its own. */
  public String id() {
    return "f" + pointer.replace('/', '-');
  }

  /** Whether it is a single number. */
  public boolean number() {
    return kind == Kind.NUMBER;
  }

  /** Whether something is wrong with it or with anything within it. */
  public boolean faulty() {
    return !faults.isEmpty()
        || main.stream().anyMatch(Item::faulty)
        || finerFaulty()
        || entries.stream().anyMatch(entry -> entry.faulty());
  }

  /** Whether something is wrong among what is asked only of those who look for it. */
  public boolean finerFaulty() {
    return finer.stream().anyMatch(Item::faulty);
  }

  /** What is wrong with it and with all within it, with the ids of the elements. */
  Stream<FormFault> allFaults() {
    Stream<Item> within =
        Stream.of(
                main.stream(),
                finer.stream(),
                entries.stream().flatMap(entry -> entry.main().stream()),
                entries.stream().flatMap(entry -> entry.finer().stream()))
            .flatMap(items -> items);
    return Stream.concat(
        faults.stream().map(fault -> new FormFault(id(), fault.pointer(), fault.text())),
        within.flatMap(Item::allFaults));
  }

  /** What its texts name. */
  public Map<String, String> names() {
    return Map.of("label", label);
  }

  /** Names of its twelve places: months or sectors. */
  public List<Place> places() {
    return value.places();
  }

  /** The pointers and labels of the first entry that a list does not have yet. */
  public Entry template() {
    return entries.get(entries.size() - 1);
  }

  /** The entries that the plan has. */
  public List<Entry> present() {
    return entries.subList(0, entries.size() - 1);
  }

  /**
   * What to know of a field.
   *
   * @param meaning what it is
   * @param find how to find it
   * @param lines range, usual value with its source, default
   */
  public record Help(String meaning, String find, List<String> lines) {}

  /**
   * What is wrong with a field.
   *
   * @param pointer what the fault names: the field or something within it
   * @param text what is wrong, in words
   */
  public record Wrong(String pointer, String text) {}

  /**
   * The units in which a number can be typed.
   *
   * @param si the contract's own
   * @param us US customary
   */
  public record Units(Unit si, Unit us) {}

  /**
   * A choice.
   *
   * @param value its name in a plan
   * @param label its name for people
   */
  public record Option(String value, String label) {}

  /**
   * What the plan holds.
   *
   * @param text a single value, empty for none
   * @param usual the number that stands in for none; null where nothing does
   * @param present whether the plan has the section
   * @param required whether it must be given
   * @param places the places of twelve, or of ticks
   */
  public record Value(
      String text, Double usual, boolean present, boolean required, List<Place> places) {

    static final Value NONE = new Value("", null, false, false, List.of());
  }

  /**
   * One of several places of a field.
   *
   * @param key index, or value of a tick
   * @param label its name
   * @param text what the plan holds there
   * @param ticked whether it is ticked
   */
  public record Place(String key, String label, String text, boolean ticked) {}

  /**
   * A group of a list.
   *
   * @param index place in the list, or {@link #NEW}
   * @param number place as people count
   * @param main what is asked first
   * @param finer the rest
   */
  public record Entry(String index, String number, List<Item> main, List<Item> finer) {

    boolean faulty() {
      return main.stream().anyMatch(Item::faulty) || finerFaulty();
    }

    /** Whether something is wrong among its finer points. */
    public boolean finerFaulty() {
      return finer.stream().anyMatch(Item::faulty);
    }

    /** What its heading names. */
    public Map<String, String> places() {
      return Map.of("number", number);
    }
  }
}
