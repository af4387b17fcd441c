/** Numbers of the first block; each block is twice the one before, up to the largest. */
const LEAST_BLOCK = 3 * 64;
const LARGEST_BLOCK = 3 * 65_536;

/** Numbers that arrive in threes. They stay where they are when more come: memory is touched once. */
export class NumberList {
  length = 0;
  private readonly full: Float64Array[] = [];
  private last = new Float64Array(LEAST_BLOCK);
  private filled = 0;

  add(a: number, b: number, c: number): void {
    if (this.filled === this.last.length) {
      this.full.push(this.last);
      this.last = new Float64Array(Math.min(2 * this.last.length, LARGEST_BLOCK));
      this.filled = 0;
    }
    const { last, filled } = this;
    last[filled] = a;
    last[filled + 1] = b;
    last[filled + 2] = c;
    this.filled = filled + 3;
    this.length += 3;
  }

  /** All of them in their order, a whole number of threes each. */
  blocks(): readonly Float64Array[] {
    return [...this.full, this.last.subarray(0, this.filled)];
  }
}
