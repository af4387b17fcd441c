const NARROWEST = 3;
const WIDEST = 22;

/** Width of an input for its text, in figures and a little room for the caret. */
export function widthOf(text: string, figures?: number): string {
  const wanted = figures ?? Math.max(NARROWEST, text.length);
  return `${Math.min(WIDEST, wanted) + 0.6}ch`;
}
