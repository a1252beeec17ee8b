package org.marshlight.economy;

/**
 * Money of one year at today's prices, as long as the plant works.
 *
 * @param energy what energy saves; moves with fuel prices
 * @param other what else it saves or earns
 * @param care what it costs
 */
public record YearlyMoney(double energy, double other, double care) {

  /** No money at all. */
  public static final YearlyMoney NONE = new YearlyMoney(0, 0, 0);

  /** What is saved in a year, less what is spent. */
  public double net() {
    return energy + other - care;
  }

  public YearlyMoney plus(YearlyMoney more) {
    return new YearlyMoney(energy + more.energy, other + more.other, care + more.care);
  }

  /** The same with energy at another price. */
  YearlyMoney atPrice(double factor) {
    return new YearlyMoney(energy * factor, other, care);
  }
}
