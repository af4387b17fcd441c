/** What a quantity is; each kind has one core unit. */
export type UnitKind =
  | 'length'
  | 'force'
  | 'torque'
  | 'temperature'
  | 'pressure'
  | 'time'
  | 'ratio'
  | 'angle';

/** A unit against the core unit of its kind: core = (value − zero) · times / over, both factors exact. */
export interface Unit {
  readonly kind: UnitKind;
  readonly times: number;
  readonly over: number;
  /** What this unit reads where the core unit reads 0. */
  readonly zero: number;
}

/** Standard gravity, m/s², by definition. */
export const STANDARD_GRAVITY = 9.80665;

/** The international inch, mm, by definition (1959). */
export const MILLIMETRES_PER_INCH = 25.4;

/** The avoirdupois pound, kg, by definition (1959). */
const KILOGRAMS_PER_POUND = 0.45359237;

const NEWTONS_PER_POUND = KILOGRAMS_PER_POUND * STANDARD_GRAVITY;
const OUNCES_PER_POUND = 16;
const INCHES_PER_FOOT = 12;

const HOURS_PER_DAY = 24;
/** The year of 365 days, as tables of creep take it. */
const HOURS_PER_YEAR = 365 * HOURS_PER_DAY;

function scaled(kind: UnitKind, times: number, over = 1): Unit {
  return { kind, times, over, zero: 0 };
}

const TABLE = {
  mm: scaled('length', 1),
  µm: scaled('length', 1, 1000),
  cm: scaled('length', 10),
  m: scaled('length', 1000),
  in: scaled('length', MILLIMETRES_PER_INCH),
  thou: scaled('length', MILLIMETRES_PER_INCH, 1000),

  N: scaled('force', 1),
  kN: scaled('force', 1000),
  kgf: scaled('force', STANDARD_GRAVITY),
  gf: scaled('force', STANDARD_GRAVITY, 1000),
  lbf: scaled('force', NEWTONS_PER_POUND),
  ozf: scaled('force', NEWTONS_PER_POUND, OUNCES_PER_POUND),

  N·mm: scaled('torque', 1),
  cN·m: scaled('torque', 10),
  N·m: scaled('torque', 1000),
  kgf·cm: scaled('torque', STANDARD_GRAVITY * 10),
  kgf·m: scaled('torque', STANDARD_GRAVITY * 1000),
  lbf·in: scaled('torque', NEWTONS_PER_POUND * MILLIMETRES_PER_INCH),
  lbf·ft: scaled('torque', NEWTONS_PER_POUND * MILLIMETRES_PER_INCH * INCHES_PER_FOOT),
  ozf·in: scaled('torque', NEWTONS_PER_POUND * MILLIMETRES_PER_INCH, OUNCES_PER_POUND),

  '°C': scaled('temperature', 1),
  '°F': { kind: 'temperature', times: 5, over: 9, zero: 32 },
  K: { kind: 'temperature', times: 1, over: 1, zero: 273.15 },

  MPa: scaled('pressure', 1),
  GPa: scaled('pressure', 1000),
  kPa: scaled('pressure', 1, 1000),
  bar: scaled('pressure', 1, 10),
  psi: scaled('pressure', NEWTONS_PER_POUND, MILLIMETRES_PER_INCH ** 2),
  ksi: scaled('pressure', NEWTONS_PER_POUND * 1000, MILLIMETRES_PER_INCH ** 2),

  s: scaled('time', 1, 3600),
  min: scaled('time', 1, 60),
  h: scaled('time', 1),
  day: scaled('time', HOURS_PER_DAY),
  week: scaled('time', 7 * HOURS_PER_DAY),
  month: scaled('time', HOURS_PER_YEAR, 12),
  year: scaled('time', HOURS_PER_YEAR),

  '-': scaled('ratio', 1),
  '×': scaled('ratio', 1),
  '%': scaled('ratio', 1, 100),

  rad: scaled('angle', 1),
  '°': scaled('angle', Math.PI, 180),
} as const satisfies Readonly<Record<string, Unit>>;

/** A unit by its symbol as displayed; torque never without the dot, force never as a mass. */
export type UnitSymbol = keyof typeof TABLE;

export const UNITS: Readonly<Record<UnitSymbol, Unit>> = TABLE;

/** The one unit of each kind inside the core. */
export const CORE_UNIT = {
  length: 'mm',
  force: 'N',
  torque: 'N·mm',
  temperature: '°C',
  pressure: 'MPa',
  time: 'h',
  ratio: '-',
  angle: 'rad',
} as const satisfies Readonly<Record<UnitKind, UnitSymbol>>;
