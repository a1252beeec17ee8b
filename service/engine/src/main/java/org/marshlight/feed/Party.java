package org.marshlight.feed;

/** Names under which matter leaves or enters the loop, and those of its processes. */
public final class Party {

  /** Outside the loop: where matter comes from. */
  public static final String PEOPLE = "people";

  public static final String FEEDS = "feeds";
  public static final String RAIN = "rain";
  public static final String SUNLIGHT = "photosynthesis";
  public static final String WATER_SUPPLY = "water-supply";
  public static final String PURCHASES = "purchases";

  /** Outside the loop: where matter goes. */
  public static final String AIR = "air";

  public static final String OXYGEN = "oxygen-uptake";
  public static final String BURNER = "burner";
  public static final String FLARE = "flare";
  public static final String LAND = "land";
  public static final String SOIL = "soil";
  public static final String WATER_USE = "water-use";
  public static final String HAULED_AWAY = "hauled-away";
  public static final String FUEL_TANK = "fuel-tank";

  /** Water set free by, or bound in, chemical change. */
  public static final String REACTION = "reaction";

  /** Processes of the loop. */
  public static final String TANK = "tank";

  public static final String GAS_STORE = "gas-store";
  public static final String STILL = "still";
  public static final String HEAP = "heap";
  public static final String GREYWATER_SOAKAGE = "greywater-soakage";

  private Party() {}

  /** Name of a bed, counted from zero in the order of the flow. */
  public static String bed(int index) {
    return "bed-" + (index + 1);
  }
}
