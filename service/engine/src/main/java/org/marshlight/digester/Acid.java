package org.marshlight.digester;

/** Acid in sludge or liquor: its COD from people's load and from the rest, and its carbon, kg. */
final class Acid {

  double people;
  double other;
  double carbon;

  double cod() {
    return people + other;
  }

  /** Leaves a share of it. */
  void keep(double share) {
    people *= share;
    other *= share;
    carbon *= share;
  }

  void add(Acid from, double share) {
    people += from.people * share;
    other += from.other * share;
    carbon += from.carbon * share;
  }
}
