package org.marshlight.contract;

/** RFC 6901 pointers to the fields of a document. */
public final class Pointer {

  /** The whole document. */
  public static final String ROOT = "";

  private Pointer() {}

  /** The field of that name below the place a pointer names. */
  public static String child(String parent, String name) {
    return parent + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The element of that index, from zero, of the list that a pointer names. */
  public static String child(String parent, int index) {
    return parent + "/" + index;
  }
}
