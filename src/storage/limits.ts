/** The ranges of the door: what a document or a field may hold at all, in the unit of its key. */
export const LIMITS = {
  insertDiameter_mm: { least: 0.05, greatest: 30 },
  insertLength_mm: { least: 0.05, greatest: 60 },
  readings: { least: 1, greatest: 50 },
  permissibleError_mm: { least: 0, greatest: 0.2 },
  clampedThickness_mm: { least: 0.2, greatest: 100 },
  clearanceHole_mm: { least: 1, greatest: 60 },
  gap_mm: { least: 0, greatest: 50 },
  sunk_mm: { least: 0, greatest: 20 },
  wallLines: { least: 1, greatest: 30 },
  lineWidth_mm: { least: 0.1, greatest: 2 },
  wallThickness_mm: { least: 0.1, greatest: 50 },
  layerHeight_mm: { least: 0.04, greatest: 1 },
  infill_percent: { least: 0, greatest: 100 },
  topSkin_mm: { least: 0, greatest: 20 },
  hostThickness_mm: { least: 1, greatest: 500 },
  bossDiameter_mm: { least: 2, greatest: 200 },
  fit_mm: { least: 0, greatest: 0.15 },
  step_mm: { least: 0.01, greatest: 0.2 },
  screwLength_mm: { least: 2, greatest: 200 },
  sleeveDiameter_mm: { least: 1, greatest: 60 },
  patternCount: { least: 1, greatest: 40 },
  spacing_mm: { least: 1, greatest: 2_000 },
  place_mm: { least: -2_000, greatest: 2_000 },
  edge_mm: { least: 0.5, greatest: 2_000 },
  moment_Nm: { least: -1_000, greatest: 1_000 },
  retightenings: { least: 0, greatest: 4 },
  pull_N: { least: 0, greatest: 20_000 },
  shear_N: { least: 0, greatest: 20_000 },
  serviceTemperature_degC: { least: -40, greatest: 250 },
  duration_h: { least: 0, greatest: 438_000 },
  setting_Nm: { least: 0.005, greatest: 60 },
  settings: { least: 0, greatest: 60 },
  toolStep_Nm: { least: 0.001, greatest: 5 },
  factor: { least: 1, greatest: 10 },
  count: { least: 0, greatest: 100_000 },
  drawer: { least: 1, greatest: 5_000 },
} as const satisfies Record<string, { readonly least: number; readonly greatest: number }>;

export type LimitName = keyof typeof LIMITS;

/** A load is 0 or at least this, N: a thousandth of what a bench can tell, and still a divisor of finite factors. */
export const LEAST_LOAD_N = 0.001;
