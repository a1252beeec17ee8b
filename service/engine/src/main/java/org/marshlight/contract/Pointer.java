package org.marshlight.contract;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** RFC 6901 pointers to the fields of a document. */
public final class Pointer {

  /** The whole document. */
  public static final String ROOT = "";

  private static final Pattern FORM = Pattern.compile("(/([^~/]|~[01])*)*");

  private Pointer() {}

  /** Whether a text is a pointer at all. */
  public static boolean isPointer(String text) {
    return FORM.matcher(text).matches();
  }

  /**
   * The names and indices on the way from the whole document to the place a pointer names.
   *
   * @throws IllegalArgumentException if the text is no pointer
   */
  public static List<String> names(String pointer) {
    if (!isPointer(pointer)) {
      throw new IllegalArgumentException("no pointer: " + pointer);
    }
    if (pointer.isEmpty()) {
      return List.of();
    }
    return Arrays.stream(pointer.substring(1).split("/", -1))
        .map(name -> name.replace("~1", "/").replace("~0", "~"))
        .toList();
  }

  /** The field of that name below the place a pointer names. */
  public static String child(String parent, String name) {
    return parent + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The element of that index, from zero, of the list that a pointer names. */
  public static String child(String parent, int index) {
    return parent + "/" + index;
  }
}
