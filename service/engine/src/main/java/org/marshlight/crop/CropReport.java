package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.marshlight.contract.Months;
import org.marshlight.crop.CropEstimate.Limit;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

/** Makes the figures of the stands from their year. */
final class CropReport {

  /** Growth lost below which nothing counts as lacking. */
  private static final double WORTH_NAMING = 0.01;

  private static final List<Limit> LACKING =
      List.of(Limit.NITROGEN, Limit.PHOSPHORUS, Limit.POTASSIUM, Limit.WATER);

  private CropReport() {}

  static CropEstimate of(List<CropStand> stands, List<CropGrowth> growths) {
    List<CropEstimate.Bed> beds = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      beds.add(bed(i, stands.get(i), growths.get(i)));
    }
    return new CropEstimate(
        annual(growths), monthly(growths), List.copyOf(beds), years(stands, growths));
  }

  private static CropEstimate.Annual annual(List<CropGrowth> growths) {
    return new CropEstimate.Annual(
        sum(growths, g -> g.organs().totalSolidsKg()),
        sum(growths, CropGrowth::starchKg),
        sum(growths, CropGrowth::sugarKg),
        sum(growths, g -> g.tops().totalSolidsKg()),
        sum(growths, CropGrowth::growthKg),
        sum(growths, g -> Months.sum(g.nitrogenUptakeKg())),
        sum(growths, g -> Months.sum(g.phosphorusUptakeKg())),
        sum(growths, g -> Months.sum(g.potassiumUptakeKg())),
        sum(growths, g -> taken(g).nitrogenKg()),
        sum(growths, g -> taken(g).phosphorusKg()),
        sum(growths, g -> taken(g).potassiumKg()));
  }

  private static Matter taken(CropGrowth growth) {
    return growth.organs().plus(growth.tops());
  }

  private static CropEstimate.Monthly monthly(List<CropGrowth> growths) {
    return new CropEstimate.Monthly(
        months(growths, CropGrowth::topsDryKg),
        months(growths, CropGrowth::undergroundDryKg),
        months(growths, CropGrowth::nitrogenUptakeKg),
        months(growths, CropGrowth::phosphorusUptakeKg),
        months(growths, CropGrowth::potassiumUptakeKg));
  }

  private static CropEstimate.Bed bed(int index, CropStand stand, CropGrowth growth) {
    double organs = growth.organs().totalSolidsKg();
    Limit limit = limit(growth);
    return new CropEstimate.Bed(
        Party.bed(index),
        stand.bed().plant(),
        stand.bed().areaM2(),
        new CropEstimate.BedMonthly(
            Months.list(growth.topsDryKg()), Months.list(growth.undergroundDryKg())),
        growth.peakTopsKg(),
        growth.undergroundBeforeHarvestKg(),
        organs,
        growth.organs().freshKg(),
        growth.starchKg(),
        organs > 0 ? growth.starchKg() / organs : null,
        growth.tops().totalSolidsKg(),
        stand.season().month[stand.season().harvestDay] + 1,
        stand.bed().harvestedFraction(),
        stand.plant().sustainableHarvest(),
        limit,
        limit == Limit.NOTHING ? 0 : lost(growth, limit) / possible(growth, limit),
        stand.methaneKgM2Year() * stand.bed().areaM2());
  }

  /**
   * What holds growth back most. Thin reserves come last, for they may themselves be the work of
   * what was lacking.
   */
  private static Limit limit(CropGrowth growth) {
    Limit worst = Limit.NOTHING;
    double most = WORTH_NAMING * possible(growth, Limit.NITROGEN);
    for (Limit limit : LACKING) {
      if (lost(growth, limit) > most) {
        worst = limit;
        most = lost(growth, limit);
      }
    }
    boolean thinned = lost(growth, Limit.HARVEST) > WORTH_NAMING * possible(growth, Limit.HARVEST);
    return worst == Limit.NOTHING && thinned ? Limit.HARVEST : worst;
  }

  private static double lost(CropGrowth growth, Limit limit) {
    return switch (limit) {
      case NOTHING -> 0;
      case NITROGEN -> growth.lost().toNitrogenKg();
      case PHOSPHORUS -> growth.lost().toPhosphorusKg();
      case POTASSIUM -> growth.lost().toPotassiumKg();
      case WATER -> growth.lost().toWaterKg();
      case HARVEST -> growth.lost().toHarvestKg();
    };
  }

  /** Growth that would be made if neither a limit nor what acts after it held it back, kg. */
  private static double possible(CropGrowth growth, Limit limit) {
    double possible = growth.growthKg();
    for (Limit lacking : LACKING) {
      possible += lost(growth, lacking);
    }
    return limit == Limit.HARVEST ? possible + lost(growth, limit) : possible;
  }

  /** The first years as shares of the mature one. */
  private static List<CropEstimate.StandYear> years(
      List<CropStand> stands, List<CropGrowth> growths) {
    return List.of(
        year(1, stands, growths, PlantTraits::firstYear),
        year(2, stands, growths, PlantTraits::secondYear),
        year(3, stands, growths, plant -> 1));
  }

  private static CropEstimate.StandYear year(
      int year,
      List<CropStand> stands,
      List<CropGrowth> growths,
      ToDoubleFunction<PlantTraits> share) {
    double[] shares = stands.stream().map(CropStand::plant).mapToDouble(share).toArray();
    return new CropEstimate.StandYear(
        year,
        sum(growths, shares, g -> g.organs().totalSolidsKg()),
        sum(growths, shares, CropGrowth::starchKg),
        sum(growths, shares, g -> g.tops().totalSolidsKg()),
        sum(growths, shares, g -> Months.sum(g.nitrogenUptakeKg())),
        sum(growths, shares, g -> Months.sum(g.phosphorusUptakeKg())),
        sum(growths, shares, g -> Months.sum(g.potassiumUptakeKg())));
  }

  private static double sum(List<CropGrowth> growths, ToDoubleFunction<CropGrowth> figure) {
    return growths.stream().mapToDouble(figure).sum();
  }

  private static double sum(
      List<CropGrowth> growths, double[] shares, ToDoubleFunction<CropGrowth> figure) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * figure.applyAsDouble(growths.get(i));
    }
    return sum;
  }

  private static List<Double> months(
      List<CropGrowth> growths, Function<CropGrowth, double[]> figure) {
    double[] sum = new double[Months.COUNT];
    for (CropGrowth growth : growths) {
      double[] values = figure.apply(growth);
      for (int month = 0; month < Months.COUNT; month++) {
        sum[month] += values[month];
      }
    }
    return Months.list(sum);
  }
}
