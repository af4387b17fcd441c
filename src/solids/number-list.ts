/** Numbers that arrive one after the other. */
export class NumberList {
  length = 0;
  private values = new Float64Array(3 * 4096);

  /** Room for three more, from `length` on. */
  add(a: number, b: number, c: number): void {
    if (this.length + 3 > this.values.length) {
      const larger = new Float64Array(4 * this.values.length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.length] = a;
    this.values[this.length + 1] = b;
    this.values[this.length + 2] = c;
    this.length += 3;
  }

  all(): Float64Array {
    return this.values.subarray(0, this.length);
  }
}
