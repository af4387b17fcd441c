/** Least squares of a response on columns, by way of columns at right angles to each other. */
export interface OrthogonalFit {
  /** Slope of each column. */
  readonly slopes: readonly number[];
  /** Response where every column is at its mean. */
  readonly meanResponse: number;
  readonly means: readonly number[];
  /** Sum of the squared residuals, and of the squared differences of the response from its mean. */
  readonly residualSquares: number;
  readonly totalSquares: number;
  /** Triangle R of the centred columns X = Q·R, row by row. */
  readonly triangle: readonly (readonly number[])[];
  /** Length of each centred column that the ones before it do not explain, over its own length; 0 … 1. */
  readonly ownShares: readonly number[];
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, place) => sum + value * (other[place] ?? 0), 0);

/** Mean with a second pass that takes out what rounding left. */
export function carefulMean(values: readonly number[]): number {
  const first = values.reduce((sum, value) => sum + value, 0) / values.length;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}

const less = (values: readonly number[], factor: number, other: readonly number[]): number[] =>
  values.map((value, place) => value - factor * (other[place] ?? 0));

/**
 * Least squares with an intercept, stable for columns that nearly depend on each other.
 *
 *     X − X̄ = Q·R        R·b = Qᵀ·(y − ȳ)        residuals r = (y − ȳ) − Q·Qᵀ·(y − ȳ)
 *
 * Columns and response are centred first; then modified Gram-Schmidt, the response with them. A column without
 * an own share has slope 0: the caller looks at the shares.
 *
 * @param columns - predictors, each as long as the response
 * @param response - at least one value
 * @returns slopes, sums of squares and the triangle that their covariance comes from
 */
export function orthogonalFit(
  columns: readonly (readonly number[])[],
  response: readonly number[],
): OrthogonalFit {
  const means = columns.map(carefulMean);
  const meanResponse = carefulMean(response);
  let rest = response.map((value) => value - meanResponse);
  const totalSquares = dot(rest, rest);
  const upright: number[][] = [];
  const triangle: number[][] = columns.map(() => columns.map(() => 0));
  const projections: number[] = [];
  const ownShares: number[] = [];
  for (const [place, column] of columns.entries()) {
    let own = column.map((value) => value - (means[place] ?? 0));
    const length = Math.sqrt(dot(own, own));
    for (const [earlier, unit] of upright.entries()) {
      const along = dot(unit, own);
      own = less(own, along, unit);
      const row = triangle[earlier];
      if (row) row[place] = along;
    }
    const ownLength = Math.sqrt(dot(own, own));
    ownShares.push(length === 0 ? 0 : ownLength / length);
    const unit = ownLength === 0 ? own : own.map((value) => value / ownLength);
    upright.push(unit);
    const row = triangle[place];
    if (row) row[place] = ownLength;
    const along = dot(unit, rest);
    projections.push(along);
    rest = less(rest, along, unit);
  }
  return {
    slopes: solvedUpwards(triangle, projections),
    meanResponse,
    means,
    residualSquares: dot(rest, rest),
    totalSquares,
    triangle,
    ownShares,
  };
}

/** b with R·b = v. */
function solvedUpwards(triangle: readonly (readonly number[])[], v: readonly number[]): number[] {
  const b = v.map(() => 0);
  for (let place = v.length - 1; place >= 0; place -= 1) {
    const row = triangle[place] ?? [];
    const diagonal = row[place] ?? 0;
    b[place] =
      diagonal === 0 ? 0 : ((v[place] ?? 0) - dot(row.slice(place + 1), b.slice(place + 1))) / diagonal;
  }
  return b;
}

/**
 * Solution of the transposed triangle: a distance from the middle of the columns, in their own spread.
 *
 *     u with Rᵀ·u = d
 *
 * @param triangle - R, row by row, no zero on its diagonal
 * @param difference - d, one a column
 * @returns u [-], one a column
 */
export function solvedDownwards(
  triangle: readonly (readonly number[])[],
  difference: readonly number[],
): number[] {
  const u: number[] = [];
  for (const [place, value] of difference.entries()) {
    const above = u.reduce((sum, one, row) => sum + one * (triangle[row]?.[place] ?? 0), 0);
    u.push((value - above) / (triangle[place]?.[place] ?? 1));
  }
  return u;
}
