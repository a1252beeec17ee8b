package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CatalogueItem;
import org.marshlight.evidence.Catalogues;
import org.marshlight.wetland.BedKind;

/** What is worth saying of plants beside their figures. */
final class CropNotices {

  private static final String INVASIVE = "invasive";

  private CropNotices() {}

  static List<Notice> of(
      List<CropStand> stands, CropEstimate estimate, ClimateYear year, boolean humanOrigin) {
    List<Notice> notices = new ArrayList<>();
    if (humanOrigin) {
      notices.add(Notice.of("crop.not-food"));
    }
    notices.add(Notice.of("crop.first-years"));
    stands.stream()
        .map(stand -> stand.bed().plant())
        .distinct()
        .forEach(id -> invasive(id, notices));
    for (int i = 0; i < stands.size(); i++) {
      stand(stands.get(i), estimate.beds().get(i), year, notices);
    }
    return List.copyOf(notices);
  }

  private static void invasive(String id, List<Notice> notices) {
    CatalogueItem item = Catalogues.standard().find("plants", id).orElseThrow();
    if (item.kind().startsWith(INVASIVE)) {
      notices.add(Notice.of("crop.invasive", "plant", item.name()));
    }
  }

  private static void stand(
      CropStand stand, CropEstimate.Bed bed, ClimateYear year, List<Notice> notices) {
    PlantTraits plant = stand.plant();
    if (bed.harvestedFraction() > bed.sustainableFraction()) {
      notices.add(
          Notice.of(
              "crop.harvest-above-regrowth",
              "bed",
              bed.name(),
              "lifted",
              bed.harvestedFraction(),
              "limit",
              bed.sustainableFraction(),
              "underground",
              bed.undergroundBeforeHarvestDryKg() / bed.areaM2()));
    }
    double coldest = Double.POSITIVE_INFINITY;
    for (double temperature : year.dailyAirC()) {
      coldest = Math.min(coldest, temperature);
    }
    if (coldest < plant.hardiness()) {
      notices.add(
          Notice.of(
              "crop.killed-by-frost",
              "bed",
              bed.name(),
              "coldest",
              coldest,
              "hardiness",
              plant.hardiness()));
    }
    if (stand.bed().kind() == BedKind.FREE_WATER_SURFACE
        && stand.bed().depthM() > plant.deepestWater()) {
      notices.add(
          Notice.of(
              "crop.water-too-deep",
              "bed",
              bed.name(),
              "depth",
              stand.bed().depthM(),
              "deepest",
              plant.deepestWater()));
    }
    lacking(bed, notices);
  }

  private static void lacking(CropEstimate.Bed bed, List<Notice> notices) {
    switch (bed.limit()) {
      case NITROGEN, PHOSPHORUS, POTASSIUM ->
          notices.add(
              Notice.of(
                  "crop.nutrient-lacking",
                  "bed",
                  bed.name(),
                  "nutrient",
                  bed.limit().name().toLowerCase(java.util.Locale.ROOT),
                  "percent",
                  100 * bed.limitedFraction()));
      case WATER ->
          notices.add(
              Notice.of(
                  "crop.water-lacking", "bed", bed.name(), "percent", 100 * bed.limitedFraction()));
      default -> {
        // Light, warmth and a harvest that the plan chose need no remark of their own.
      }
    }
  }
}
