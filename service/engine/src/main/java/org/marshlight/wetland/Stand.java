package org.marshlight.wetland;

/**
 * What grows on a bed. It answers what the bed's water makes of it; whatever it takes up is part of
 * what the bed removes.
 *
 * @param <G> what it tells of its growth
 */
public interface Stand<G extends StandGrowth> {

  /** Leaf in each month as a share of full leaf, 0 to 1; does not depend on supply. */
  double[] canopy();

  /** Evapotranspiration of a small stand in full leaf over that of short grass. */
  double smallStandCropCoefficient();

  /** Methane that a wet stand of this plant gives off, kg/(m2.a). */
  double methaneKgM2Year();

  /**
   * A year of the mature stand under a supply that repeats itself.
   *
   * @param supply what the bed receives
   */
  G grow(StandSupply supply);
}
