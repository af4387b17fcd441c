/** The one row that matches; a missing or a second row is a fault of the table or of the test. */
export function theRow<Row>(rows: readonly Row[], matches: (row: Row) => boolean): Row {
  const [first, ...others] = rows.filter(matches);
  if (first === undefined || others.length > 0)
    throw new Error(`${others.length + (first === undefined ? 0 : 1)} rows match, not one`);
  return first;
}
