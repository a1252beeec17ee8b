package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Months;
import org.marshlight.contract.Quantity;
import org.marshlight.statistics.PercentileWeights;
import org.marshlight.statistics.Sample;

/**
 * How a figure spreads over draws. Standard errors are those of independent draws; the scrambled
 * points do a little better.
 *
 * @param p5Error standard error of it
 * @param p10Error standard error of it
 * @param p50Error standard error of it
 * @param p90Error standard error of it
 * @param p95Error standard error of it
 */
@Meaning("How a figure spreads over draws.")
public record DrawnSpread(
    @Meaning("UCUM code.") @Size(max = 40) String unit,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Mean.")
        double mean,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard deviation.")
        double deviation,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Fifth percentile.")
        double p5,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard error of the fifth percentile.")
        double p5Error,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Tenth percentile.")
        double p10,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard error of the tenth percentile.")
        double p10Error,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Median.")
        double p50,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard error of the median.")
        double p50Error,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Ninetieth percentile.")
        double p90,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard error of the ninetieth percentile.")
        double p90Error,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Ninety-fifth percentile.")
        double p95,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Standard error of the ninety-fifth percentile.")
        double p95Error,
    @Meaning("Shares of the draws by value.") Histogram histogram) {

  private static final int BINS = 20;

  /** Bins of equal width. */
  @Meaning("Bins of equal width.")
  public record Histogram(
      @Meaning("UCUM code of the ends.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Least value.")
          double from,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest value.")
          double to,
      @Size(max = BINS)
          @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the draws in each bin from the least value up.")
          List<Double> sharesFraction) {}

  /** Makes spreads and keeps the weights of percentiles, which hang on nothing but their number. */
  static final class Maker {

    private static final double[] PERCENTILES = {0.05, 0.1, 0.5, 0.9, 0.95};

    private final Map<Integer, PercentileWeights[]> weights = new HashMap<>();

    /**
     * The spread of a figure.
     *
     * @param unit UCUM code
     * @param values a value for each draw; NaN where it has none
     * @return the spread; null if no draw has a value
     */
    DrawnSpread of(String unit, double[] values) {
      Sample sample = Sample.of(values);
      if (sample.size() == 0) {
        return null;
      }
      PercentileWeights[] of = weights.computeIfAbsent(sample.size(), Maker::weights);
      return new DrawnSpread(
          unit,
          sample.mean(),
          sample.deviation(),
          sample.percentile(PERCENTILES[0]),
          sample.standardError(of[0]),
          sample.percentile(PERCENTILES[1]),
          sample.standardError(of[1]),
          sample.percentile(PERCENTILES[2]),
          sample.standardError(of[2]),
          sample.percentile(PERCENTILES[3]),
          sample.standardError(of[3]),
          sample.percentile(PERCENTILES[4]),
          sample.standardError(of[4]),
          new Histogram(unit, sample.least(), sample.most(), Months.list(sample.histogram(BINS))));
    }

    private static PercentileWeights[] weights(int size) {
      PercentileWeights[] weights = new PercentileWeights[PERCENTILES.length];
      for (int i = 0; i < weights.length; i++) {
        weights[i] = PercentileWeights.of(size, PERCENTILES[i]);
      }
      return weights;
    }
  }
}
