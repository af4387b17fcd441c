import type { HoleReading } from '../../src/core/holes/hole-reading.ts';

/** A hole read with jaws of 0.3 mm and a caliper of ±0.03 mm, except where said otherwise. */
export const holeReading = (
  drawn: number,
  measured: number | readonly number[],
  changes: Partial<HoleReading> = {},
): HoleReading => ({
  drawn,
  measured: typeof measured === 'number' ? [measured] : measured,
  instrument: 'caliper-jaws',
  axis: 'vertical',
  permissibleError: 0.03,
  jawFlat: 0.3,
  gaugeStep: 0.1,
  ...changes,
});

/** A hole with the error and the standard uncertainty that are wanted: a pin whose step makes the uncertainty. */
export function readingOf(point: {
  readonly drawn: number;
  readonly error: number;
  readonly standardUncertainty: number;
}): HoleReading {
  const gaugeStep = point.standardUncertainty * Math.sqrt(12);
  return holeReading(point.drawn, point.drawn + point.error - gaugeStep / 2, {
    instrument: 'pin-gauge',
    gaugeStep,
  });
}
