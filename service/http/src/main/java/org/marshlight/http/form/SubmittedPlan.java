package org.marshlight.http.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.marshlight.http.form.Item.Kind;

/**
 * The plan that a form without scripts sends: each field is named by its pointer. Whatever cannot
 * be taken for a number stays a text, so that the plan's own check tells what is wrong with it.
 */
public final class SubmittedPlan {

  /** Name of the tick that says that the plan has a section, before its pointer. */
  public static final String HAS = "has:";

  private static final String CLIMATE_ID = "/site/climate/id";
  private static final String NORMALS = "/site/climate/monthly/";

  /** What a station brings with it. */
  private static final Set<String> PLACE =
      Set.of("/site/latitudeDeg", "/site/longitudeDeg", "/site/elevationM");

  private static final int TWELVE = 12;

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private SubmittedPlan() {}

  /**
   * The plan. A station that it names brings its own place: normals, and what still is as the form
   * showed it at first, belong to the place before.
   *
   * @param fields values by name, as the form sent them
   * @param shownAtFirst the plan that the form showed before anybody typed
   */
  public static ObjectNode of(Map<String, List<String>> fields, JsonNode shownAtFirst) {
    Branch root = new Branch();
    Predicate<String> replaced = replacedByStation(fields, shownAtFirst);
    fields.forEach(
        (name, values) -> {
          if (name.startsWith(HAS)) {
            root.reach(name.substring(HAS.length()));
          } else if (name.startsWith("/") && has(fields, name) && !replaced.test(name)) {
            put(root, name, values);
          }
        });
    return (ObjectNode) root.json();
  }

  /** The same with the entries of sections that are not ticked, for a form to show again. */
  public static ObjectNode entries(Map<String, List<String>> fields, JsonNode shownAtFirst) {
    Map<String, List<String>> ticked = new LinkedHashMap<>(fields);
    absent(fields).forEach(section -> ticked.put(HAS + section, List.of("1")));
    return of(ticked, shownAtFirst);
  }

  /** The sections that a form shows and that are not ticked, by pointer. */
  public static Set<String> absent(Map<String, List<String>> fields) {
    return fields.keySet().stream()
        .filter(name -> name.startsWith("/") && !has(fields, name))
        .map(SubmittedPlan::section)
        .collect(Collectors.toSet());
  }

  private static Predicate<String> replacedByStation(
      Map<String, List<String>> fields, JsonNode shownAtFirst) {
    if (first(fields.get(CLIMATE_ID)).isBlank()) {
      return name -> false;
    }
    Predicate<String> untouched =
        name -> TypedNumber.of(first(fields.get(name))).equals(number(shownAtFirst.at(name)));
    return name -> name.startsWith(NORMALS) || PLACE.contains(name) && untouched.test(name);
  }

  private static OptionalDouble number(JsonNode node) {
    return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
  }

  /** Whether the section of a field is ticked, if it is one that can be. */
  private static boolean has(Map<String, List<String>> fields, String name) {
    String section = section(name);
    boolean optional =
        !section.equals(name) && FieldKind.at(section).filter(Kind.SECTION::equals).isPresent();
    return !optional || fields.containsKey(HAS + section);
  }

  private static String section(String name) {
    int end = name.indexOf('/', 1);
    return end < 0 ? name : name.substring(0, end);
  }

  private static void put(Branch root, String pointer, List<String> values) {
    List<String> filled = values.stream().map(String::trim).filter(v -> !v.isEmpty()).toList();
    if (filled.isEmpty()) {
      return;
    }
    Kind kind = FieldKind.at(pointer).orElse(Kind.TEXT);
    if (kind == Kind.MONTHS || kind == Kind.CHOICES) {
      Branch list = root.reach(pointer);
      for (int i = 0; i < filled.size(); i++) {
        list.leaves.put(String.valueOf(i), leaf(kind, filled.get(i)));
      }
    } else {
      int last = pointer.lastIndexOf('/');
      Branch branch = root.reach(pointer.substring(0, last));
      branch.twelve = kind == Kind.TWELVE || kind == Kind.SECTORS;
      branch.leaves.put(pointer.substring(last + 1), leaf(kind, filled.get(0)));
    }
  }

  private static JsonNode leaf(Kind kind, String text) {
    return switch (kind) {
      case NUMBER, MONTHS, TWELVE, SECTORS -> number(text);
      case FLAG -> JSON.booleanNode(text.equals("true"));
      default -> JSON.textNode(text);
    };
  }

  private static JsonNode number(String text) {
    OptionalDouble typed = TypedNumber.of(text);
    if (typed.isEmpty() || !Double.isFinite(typed.getAsDouble())) {
      return JSON.textNode(text);
    }
    double value = typed.getAsDouble();
    boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
    return whole ? JSON.numberNode((long) value) : JSON.numberNode(value);
  }

  private static String first(List<String> values) {
    return values == null || values.isEmpty() ? "" : values.get(0);
  }

  /** A record or list that is being filled. */
  private static final class Branch {

    private final Map<String, JsonNode> leaves = new LinkedHashMap<>();
    private final Map<String, Branch> branches = new LinkedHashMap<>();
    private boolean twelve;

    /** The branch that a pointer names, made if need be. */
    private Branch reach(String pointer) {
      Branch branch = this;
      for (String token : pointer.split("/")) {
        if (!token.isEmpty()) {
          branch = branch.branches.computeIfAbsent(token, t -> new Branch());
        }
      }
      return branch;
    }

    private JsonNode json() {
      boolean list =
          !(leaves.isEmpty() && branches.isEmpty())
              && leaves.keySet().stream().allMatch(Branch::isIndex)
              && branches.keySet().stream().allMatch(Branch::isIndex);
      return list ? array() : object();
    }

    private JsonNode object() {
      ObjectNode object = JSON.objectNode();
      leaves.forEach(object::set);
      branches.forEach((name, branch) -> object.set(name, branch.json()));
      return object;
    }

    private JsonNode array() {
      TreeMap<Integer, JsonNode> inOrder = new TreeMap<>();
      leaves.forEach((index, leaf) -> inOrder.put(Integer.valueOf(index), leaf));
      branches.forEach((index, branch) -> inOrder.put(Integer.valueOf(index), branch.json()));
      return twelve ? withGaps(inOrder) : JSON.arrayNode().addAll(inOrder.values());
    }

    /** A month or sector that was left open keeps its place among the twelve. */
    private static ArrayNode withGaps(TreeMap<Integer, JsonNode> inOrder) {
      ArrayNode all = JSON.arrayNode();
      int length = Math.max(TWELVE, inOrder.lastKey() + 1);
      for (int i = 0; i < length; i++) {
        all.add(inOrder.getOrDefault(i, JSON.nullNode()));
      }
      return all;
    }

    private static boolean isIndex(String token) {
      return token.matches("\\d{1,4}");
    }
  }
}
