package org.marshlight.climate;

import org.marshlight.evidence.Coefficient;

/**
 * How far from a named station its weather still applies.
 *
 * @param latitudeDeg greatest difference in latitude, degrees
 * @param longitudeDeg greatest difference in longitude, degrees
 * @param heightM greatest difference in height above sea level, m
 */
record StationReach(
    @Coefficient("climate.station-reach-latitude") double latitudeDeg,
    @Coefficient("climate.station-reach-longitude") double longitudeDeg,
    @Coefficient("climate.station-reach-height") double heightM) {}
