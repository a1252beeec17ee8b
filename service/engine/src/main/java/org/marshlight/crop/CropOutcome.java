package org.marshlight.crop;

import java.util.List;
import org.marshlight.contract.Notice;

/**
 * What the stands give to the rest of the loop.
 *
 * @param estimate the figures
 * @param harvest what is taken off the beds
 * @param notices remarks
 */
public record CropOutcome(CropEstimate estimate, Harvest harvest, List<Notice> notices) {}
