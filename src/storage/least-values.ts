/** Least diameter of a hole, drawn, measured or printed, mm. */
export const LEAST_HOLE_MM = 0.2;

/** A load is 0 or at least this, N: a thousandth of what a bench can tell, and still a divisor of finite factors. */
export const LEAST_LOAD_N = 0.001;
