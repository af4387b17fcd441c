/** Relative deviation ± of a torque driver up to 10 N·m (ISO 6789, Type II, as a tool manual cites it). */
export const DRIVER_DEVIATION = 0.06;

/** Relative deviation ± of tightening by feel (Machinery's Handbook and NSTS 08307, in reprints). */
export const HAND_DEVIATION = 0.35;
