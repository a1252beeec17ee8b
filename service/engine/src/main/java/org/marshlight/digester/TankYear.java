package org.marshlight.digester;

import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.feed.WaterStream;

/**
 * A tank's warmth and what becomes of matter in it; nothing that burns or keeps its gas acts back
 * on either.
 *
 * @param geometry its sizes
 * @param cover what lies over its lid, complete
 * @param pressureKPa pressure of the air
 * @param warmth its warmth
 * @param matter what becomes of what is fed
 * @param effluent what leaves for the beds
 * @param notices remarks
 */
record TankYear(
    TankGeometry geometry,
    CoverDesign cover,
    double pressureKPa,
    HeatYear warmth,
    DigestionYear matter,
    WaterStream effluent,
    List<Notice> notices) {}
