package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.RecordShape;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.http.drawing.BarList.Bar;
import org.marshlight.http.report.Block.Figure;

/** What the still and the heap give back. */
final class ReturnParts {

  private ReturnParts() {}

  static Part alcohol(Sheet sheet, EthanolEstimate fuel) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        sheet.bars(
            "alcohol",
            "kW.h",
            "ethanol",
            List.of(
                new Bar(sheet.texts().plain("bar.fuel"), fuel.annual().fuelEnergyKWh(), 0),
                new Bar(sheet.texts().plain("bar.heat"), fuel.heat().sourceEnergyKWh(), 1),
                new Bar(sheet.texts().plain("bar.electricity"), fuel.heat().electricityKWh(), 2))));
    blocks.add(Block.of(null, all(sheet, fuel.annual())));
    List<Figure> figures = new ArrayList<>();
    figures.addAll(
        sheet.figures(
            fuel.still(),
            "productL",
            "productStrengthPercentVol",
            "recoveredFraction",
            "flashPointC"));
    figures.addAll(
        sheet.figures(
            fuel.heat(), "sourceEnergyKWh", "electricityKWh", "heatPerLitreMJL", "energyRatio"));
    figures.addAll(sheet.figures(fuel.mash(), "beerStrengthPercentVol", "organsFreshKg"));
    return Part.of(
        "alcohol",
        sheet.texts().plain("question.alcohol"),
        blocks,
        List.of(Block.of(null, figures)));
  }

  static Part compost(Sheet sheet, CompostEstimate heap) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        sheet.bars(
            "compost",
            "kg",
            "crop",
            List.of(
                new Bar(sheet.texts().plain("bar.nitrogen"), heap.annual().nitrogenKg(), 0),
                new Bar(sheet.texts().plain("bar.phosphorus"), heap.annual().phosphorusKg(), 1),
                new Bar(sheet.texts().plain("bar.potassium"), heap.annual().potassiumKg(), 2))));
    blocks.add(Block.of(null, all(sheet, heap.annual())));
    List<Figure> figures = new ArrayList<>();
    figures.addAll(
        sheet.figures(
            heap.mix(), "freshKg", "moistureFraction", "carbonToNitrogen", "freeAirFraction"));
    figures.addAll(sheet.figures(heap.finished(), "volumeM3", "phosphateKg", "potashKg"));
    figures.addAll(
        sheet.figures(
            heap.hygiene(),
            "peakTemperatureC",
            "above55Days",
            "above55LowDays",
            "above55HighDays",
            "significantReduction",
            "furtherReduction",
            "storageWantingDays"));
    figures.addAll(
        sheet.figures(
            heap.land(),
            "fedByNitrogenM2",
            "fedByPhosphorusM2",
            "fedByPotassiumM2",
            "leastAreaForNitrogenLimitM2"));
    return Part.of(
        "compost",
        sheet.texts().plain("question.compost"),
        blocks,
        List.of(Block.of(null, figures)));
  }

  private static List<Figure> all(Sheet sheet, Record owner) {
    return sheet.figures(owner, RecordShape.of(owner.getClass()).names().toArray(String[]::new));
  }
}
