package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Heat conduction round an upright cylindrical pit, solved by finite volumes in radius and depth.
 * Written for the tests, independent of the engine's own forms.
 *
 * <p>The pit reaches from the surface to its floor. Liquor of one temperature wets floor and lower
 * wall through a resistance; the wall above is taken as insulated. The surface loses through a
 * small resistance to an outside temperature. Solved once for steady differences and once for a
 * swing with the period of a year, in complex numbers.
 */
final class PitConduction {

  private static final double FAR_M = 25;
  private static final double YEAR_S = 365.0 * 86400;

  private final double[] radiusFaces;
  private final double[] depthFaces;
  private final double pitRadiusM;
  private final double floorM;
  private final double liquidTopM;
  private final double conductivity;
  private final double heatCapacity;
  private final double wallResistance;
  private final double surfaceResistance;

  PitConduction(
      double pitRadiusM,
      double liquidTopM,
      double liquidDepthM,
      double conductivity,
      double heatCapacityJM3K,
      double wallResistance,
      double surfaceResistance) {
    this.pitRadiusM = pitRadiusM;
    this.liquidTopM = liquidTopM;
    this.floorM = liquidTopM + liquidDepthM;
    this.conductivity = conductivity;
    this.heatCapacity = heatCapacityJM3K;
    this.wallResistance = wallResistance;
    this.surfaceResistance = surfaceResistance;
    radiusFaces = faces(List.of(pitRadiusM), pitRadiusM + FAR_M);
    depthFaces = faces(List.of(0.0, liquidTopM, floorM), floorM + FAR_M);
  }

  /** Faces of cells, fine at the stops and coarser with the distance from them. */
  private static double[] faces(List<Double> stops, double end) {
    TreeSet<Double> marks = new TreeSet<>(stops);
    marks.add(end);
    List<Double> faces = new ArrayList<>(List.of(0.0));
    double x = 0;
    while (x < end - 1e-9) {
      double here = x;
      double distance = stops.stream().mapToDouble(s -> Math.abs(here - s)).min().orElseThrow();
      double next = x + 0.05 + 0.15 * distance;
      Double mark = marks.higher(x + 1e-9);
      if (mark != null && next > mark - 0.3 * (next - x)) {
        next = mark;
      }
      faces.add(next);
      x = next;
    }
    return faces.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Loss of the liquor for each kelvin above a steady surface, W/K. */
  double steadyWK() {
    return solve(1, 0, 0).lossRe();
  }

  /** Loss that follows a yearly swing of the liquor by one kelvin: in step, and ahead, W/K. */
  Swing internal() {
    return solve(1, 0, 2 * Math.PI / YEAR_S);
  }

  /** Gain that follows a yearly swing of the surface by one kelvin, W/K. */
  Swing external() {
    Swing loss = solve(0, 1, 2 * Math.PI / YEAR_S);
    return new Swing(-loss.lossRe(), -loss.lossIm());
  }

  /**
   * A flow that swings with the year.
   *
   * @param lossRe part in step with the cause
   * @param lossIm part a quarter of a year ahead of it
   */
  record Swing(double lossRe, double lossIm) {

    double amplitude() {
      return Math.hypot(lossRe, lossIm);
    }

    /** Days by which the flow lags its cause. */
    double lagDays() {
      return -Math.atan2(lossIm, lossRe) / (2 * Math.PI) * 365;
    }
  }

  private Swing solve(double liquor, double surface, double omega) {
    int rows = depthFaces.length - 1;
    int cells = (radiusFaces.length - 1) * rows;
    ComplexBand matrix = new ComplexBand(cells, rows);
    double[] drive = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      int i = cell / rows;
      int j = cell % rows;
      if (inPit(i, j)) {
        matrix.add(cell, cell, 1, 0);
        continue;
      }
      double contact = contact(i, j);
      double open = j == 0 ? ring(i) / (surfaceResistance + height(j) / 2 / conductivity) : 0;
      drive[cell] = contact * liquor + open * surface;
      matrix.add(cell, cell, contact + open, omega * heatCapacity * ring(i) * height(j));
      if (j + 1 < rows && !inPit(i, j + 1)) {
        join(matrix, cell, cell + 1, conductance(i, j, i, j + 1));
      }
      if (cell + rows < cells && !inPit(i + 1, j)) {
        join(matrix, cell, cell + rows, conductance(i, j, i + 1, j));
      }
    }
    double[][] temperature = matrix.solve(drive);
    double lossRe = 0;
    double lossIm = 0;
    for (int cell = 0; cell < cells; cell++) {
      int i = cell / rows;
      int j = cell % rows;
      double contact = inPit(i, j) ? 0 : contact(i, j);
      lossRe += contact * (liquor - temperature[0][cell]);
      lossIm -= contact * temperature[1][cell];
    }
    return new Swing(lossRe, lossIm);
  }

  private static void join(ComplexBand matrix, int first, int second, double conductance) {
    matrix.add(first, first, conductance, 0);
    matrix.add(second, second, conductance, 0);
    matrix.add(second, first, -conductance, 0);
  }

  private boolean inPit(int i, int j) {
    return middle(radiusFaces, i) < pitRadiusM && middle(depthFaces, j) < floorM;
  }

  /** Conductance from a cell to the liquor through wall or floor, W/K. */
  private double contact(int i, int j) {
    double contact = 0;
    if (i > 0 && inPit(i - 1, j) && middle(depthFaces, j) > liquidTopM) {
      double area = 2 * Math.PI * radiusFaces[i] * height(j);
      contact += area / (wallResistance + width(i) / 2 / conductivity);
    }
    if (j > 0 && inPit(i, j - 1)) {
      contact += ring(i) / (wallResistance + height(j) / 2 / conductivity);
    }
    return contact;
  }

  private double conductance(int i, int j, int ni, int nj) {
    if (ni != i) {
      double face = 2 * Math.PI * radiusFaces[Math.max(i, ni)] * height(j);
      return conductivity * face / ((width(i) + width(ni)) / 2);
    }
    return conductivity * ring(i) / ((height(j) + height(nj)) / 2);
  }

  private double ring(int i) {
    return Math.PI * (radiusFaces[i + 1] * radiusFaces[i + 1] - radiusFaces[i] * radiusFaces[i]);
  }

  private double width(int i) {
    return radiusFaces[i + 1] - radiusFaces[i];
  }

  private double height(int j) {
    return depthFaces[j + 1] - depthFaces[j];
  }

  private static double middle(double[] faces, int i) {
    return (faces[i] + faces[i + 1]) / 2;
  }
}
