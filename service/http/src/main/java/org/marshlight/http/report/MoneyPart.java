package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.marshlight.contract.WireName;
import org.marshlight.decision.MoneyEstimate;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;

/** What the whole plan comes to in money. */
final class MoneyPart {

  private static final int EVERY = 5;

  private final Sheet sheet;
  private final MoneyEstimate money;
  private final String currency;

  private MoneyPart(Sheet sheet, MoneyEstimate money) {
    this.sheet = sheet;
    this.money = money;
    this.currency = money.currency() == null ? "" : money.currency();
  }

  static Part of(Sheet sheet, MoneyEstimate money) {
    MoneyPart part = new MoneyPart(sheet, money);
    List<Block> blocks = new ArrayList<>();
    if (!money.costsNotGiven().isEmpty()) {
      blocks.add(Block.saying(List.of(sheet.say("money.not-given", Map.of("parts", part.open())))));
    }
    blocks.add(Block.of(null, part.figures()));
    blocks.add(Block.of(sheet.texts().plain("money.swings"), part.swings()));
    blocks.add(Block.of(sheet.texts().plain("money.years"), part.years()));
    sheet.show(MoneyEstimate.class, "currency", "costsNotGiven");
    return Part.of("money", sheet.texts().plain("question.money"), blocks);
  }

  private String open() {
    return money.costsNotGiven().stream()
        .map(part -> sheet.texts().plain("field.money.capital." + WireName.of(part)))
        .collect(Collectors.joining(", "));
  }

  private List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    AppraisalEstimate appraisal = money.appraisal();
    figures.addAll(
        inCurrency(
            sheet.figures(
                appraisal,
                "investment",
                "yearlyEnergySaving",
                "yearlyOtherSaving",
                "yearlyCost",
                "netPresentValue",
                "expectedNetPresentValue"),
            currency));
    figures.addAll(sheet.figures(appraisal, "internalRate", "discountedPaybackYears"));
    figures.addAll(inCurrency(sheet.figures(appraisal, "levelisedCostPerKWh"), currency + "/kWh"));
    figures.addAll(inCurrency(sheet.figures(money, "usefulEnergyPricePerKWh"), currency + "/kWh"));
    figures.addAll(inCurrency(sheet.figures(money, "credited", "sunk", "budgetLeft"), currency));
    return figures;
  }

  private static List<Figure> inCurrency(List<Figure> figures, String unit) {
    return figures.stream().map(f -> new Figure(f.label(), f.value(), unit)).toList();
  }

  private Block.Table swings() {
    List<Row> rows =
        money.appraisal().swings().stream()
            .map(
                swing ->
                    Row.of(
                        Words.digits(100 * swing.priceFactor()) + "\u00a0%",
                        List.of(
                            Words.digits(swing.lifeYears()),
                            amount(swing.expectedNetPresentValue()))))
            .toList();
    sheet.show(
        AppraisalEstimate.Swing.class, "priceFactor", "lifeYears", "expectedNetPresentValue");
    return sheet.table(null, List.of("money.price", "money.life", "money.expected"), rows, "");
  }

  /** The first year, every fifth, and the last; the table for programs has them all. */
  private Block.Table years() {
    int last = money.years().size();
    List<Row> rows =
        money.years().stream()
            .filter(year -> year.year() == 1 || year.year() % EVERY == 0 || year.year() == last)
            .map(
                year ->
                    Row.of(
                        String.valueOf(year.year()),
                        List.of(
                            amount(year.net()),
                            Words.digits(100 * year.workingFraction()) + "\u00a0%",
                            amount(year.cumulative()))))
            .toList();
    sheet.show(
        MoneyEstimate.Year.class, "year", "net", "workingFraction", "discountFactor", "cumulative");
    return sheet.table(
        null, List.of("money.year", "money.net", "money.works", "money.cumulative"), rows, "");
  }

  private String amount(double value) {
    return currency.isEmpty() ? Words.digits(value) : Words.digits(value) + "\u00a0" + currency;
  }
}
