/** Weighted linear least squares by normal equations, for a handful of unknowns. */
export interface NormalEquations {
  /** Takes one equation in: coefficients · unknowns = value, with its weight. */
  readonly add: (coefficients: ArrayLike<number>, value: number, weight: number) => void;
  /** The unknowns; undefined where the equations do not settle them. */
  readonly solve: () => Float64Array | undefined;
}

/** A pivot below this share of its diagonal means that two unknowns cannot be told apart. */
const SINGULAR = 1e-12;

export function normalEquations(unknowns: number): NormalEquations {
  const width = unknowns + 1;
  const rows = new Float64Array(unknowns * width);

  function add(coefficients: ArrayLike<number>, value: number, weight: number): void {
    for (let row = 0; row < unknowns; row += 1) {
      const factor = weight * (coefficients[row] ?? 0);
      const start = row * width;
      for (let column = 0; column < unknowns; column += 1) {
        rows[start + column] = (rows[start + column] ?? 0) + factor * (coefficients[column] ?? 0);
      }
      rows[start + unknowns] = (rows[start + unknowns] ?? 0) + factor * value;
    }
  }

  /** Gauss–Jordan on the diagonal: the matrix is symmetric and not negative. */
  function solve(): Float64Array | undefined {
    const left = rows.slice();
    for (let pivot = 0; pivot < unknowns; pivot += 1) {
      const diagonal = left[pivot * width + pivot] ?? 0;
      if (!(diagonal > SINGULAR * (rows[pivot * width + pivot] ?? 0))) return undefined;
      for (let row = 0; row < unknowns; row += 1) {
        if (row === pivot) continue;
        const factor = (left[row * width + pivot] ?? 0) / diagonal;
        for (let column = pivot; column < width; column += 1) {
          left[row * width + column] =
            (left[row * width + column] ?? 0) - factor * (left[pivot * width + column] ?? 0);
        }
      }
    }
    return Float64Array.from(
      { length: unknowns },
      (_, row) => (left[row * width + unknowns] ?? 0) / (left[row * width + row] ?? 1),
    );
  }

  return { add, solve };
}
