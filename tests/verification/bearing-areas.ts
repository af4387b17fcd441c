import { bearingAreaOf } from '../../src/core/screws/head-bearing.ts';
import type { Check } from './check.ts';
import { headOf, threadNamed, washerFor } from './rows-of-tables.ts';

/** Area under a cap head over its full diameter and over dw, and under a washer, mm²: worked out apart. */
const AREAS = [
  ['M2', '6.8', '5.0', '15.1'],
  ['M2.5', '9.3', '7.1', '21.7'],
  ['M3', '14.7', '11.1', '29.4'],
  ['M4', '22.6', '17.6', '47.7'],
  ['M5', '33.0', '26.9', '54.8'],
  ['M6', '44.3', '34.9', '78.9'],
  ['M8', '69.1', '55.8', '137.4'],
] as const;

export const BEARING_AREAS: readonly Check[] = AREAS.flatMap(
  ([size, full, face, washer]): readonly Check[] => {
    const area = (outerDiameter: number) =>
      bearingAreaOf({
        shape: 'cylindrical',
        outerDiameter,
        holeDiameter: threadNamed(size).clearanceHoles.medium,
      });
    const shared = {
      formula: 'Ap = π/4 · (dw² − dh²)',
      unit: 'mm²',
      source: 'worked-apart',
      place: 'areas over ISO 273 medium holes',
      how: 'recomputed',
      kind: 'computed',
    } as const;
    return [
      {
        ...shared,
        id: `Ap.dk.${size}`,
        quantity: `cap head, dk, ${size}`,
        printed: full,
        computed: () => area(headOf('ISO 4762', size).diameter),
      },
      {
        ...shared,
        id: `Ap.dw.${size}`,
        quantity: `cap head, dw, ${size}`,
        printed: face,
        computed: () => area(headOf('ISO 4762', size).bearingDiameter),
      },
      {
        ...shared,
        id: `Ap.washer.${size}`,
        quantity: `washer, ${size}`,
        printed: washer,
        computed: () => area(washerFor(size).outsideDiameter),
      },
    ];
  },
);
