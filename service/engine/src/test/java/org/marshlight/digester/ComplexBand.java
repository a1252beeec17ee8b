package org.marshlight.digester;

/** A symmetric band matrix of complex numbers, solved without pivoting. */
final class ComplexBand {

  private final int size;
  private final int width;
  private final double[][] re;
  private final double[][] im;

  /**
   * An empty matrix.
   *
   * @param width greatest distance of an entry from the diagonal
   */
  ComplexBand(int size, int width) {
    this.size = size;
    this.width = width;
    re = new double[size][width + 1];
    im = new double[size][width + 1];
  }

  /** Adds to an entry on or below the diagonal, and so to its mirror image. */
  void add(int row, int column, double real, double imaginary) {
    re[row][row - column] += real;
    im[row][row - column] += imaginary;
  }

  /** Real and imaginary part of the solution for a real right-hand side; destroys the matrix. */
  double[][] solve(double[] right) {
    double[] x = right.clone();
    double[] y = new double[size];
    for (int k = 0; k < size; k++) {
      double norm = re[k][0] * re[k][0] + im[k][0] * im[k][0];
      double invRe = re[k][0] / norm;
      double invIm = -im[k][0] / norm;
      int last = Math.min(size - 1, k + width);
      for (int row = k + 1; row <= last; row++) {
        double aRe = re[row][row - k];
        double aIm = im[row][row - k];
        if (aRe == 0 && aIm == 0) {
          continue;
        }
        double fRe = aRe * invRe - aIm * invIm;
        double fIm = aRe * invIm + aIm * invRe;
        for (int column = k + 1; column <= row; column++) {
          double bRe = re[column][column - k];
          double bIm = im[column][column - k];
          re[row][row - column] -= fRe * bRe - fIm * bIm;
          im[row][row - column] -= fRe * bIm + fIm * bRe;
        }
        x[row] -= fRe * x[k] - fIm * y[k];
        y[row] -= fRe * y[k] + fIm * x[k];
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      double sumRe = x[k];
      double sumIm = y[k];
      int last = Math.min(size - 1, k + width);
      for (int row = k + 1; row <= last; row++) {
        double aRe = re[row][row - k];
        double aIm = im[row][row - k];
        sumRe -= aRe * x[row] - aIm * y[row];
        sumIm -= aRe * y[row] + aIm * x[row];
      }
      double norm = re[k][0] * re[k][0] + im[k][0] * im[k][0];
      x[k] = (sumRe * re[k][0] + sumIm * im[k][0]) / norm;
      y[k] = (sumIm * re[k][0] - sumRe * im[k][0]) / norm;
    }
    return new double[][] {x, y};
  }
}
