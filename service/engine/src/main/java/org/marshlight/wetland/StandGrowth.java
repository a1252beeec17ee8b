package org.marshlight.wetland;

import org.marshlight.feed.Matter;

/**
 * A stand's year as its bed's books need it. New plant matter and nutrients taken up are litter,
 * what was respired, the harvest and what stands more at the year's end, to the last gram.
 */
public interface StandGrowth {

  /** Nitrogen taken up in each month, kg; never more than the bed received in it. */
  double[] nitrogenUptakeKg();

  /** Phosphorus taken up in each month, kg. */
  double[] phosphorusUptakeKg();

  /** Potassium taken up in each month, kg. */
  double[] potassiumUptakeKg();

  /** Organic matter made by photosynthesis: volatile solids, COD and carbon, without nutrients. */
  Matter assimilated();

  /** Organic matter that the plants themselves burned: volatile solids, COD and carbon. */
  Matter respired();

  /** Dead matter and what leaches from it, with its nutrients. */
  Matter litter();

  /** Storage organs lifted, their water included. */
  Matter organs();

  /** Tops cut and carried off, their water included. */
  Matter tops();

  /** Dry matter that stands more at the year's end than at its start. */
  Matter standing();
}
