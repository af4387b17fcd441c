import type { SectionInput } from '../../../src/app/drawing/section-input.ts';
import { combinedSections, section } from './section-inputs.ts';

/** Single cases beside the grid. */
export function oddSections(): readonly (readonly [name: string, input: SectionInput])[] {
  const { head } = section().screw;
  const washer = { holeDiameter: 3.2, outsideDiameter: 7, thickness: 0.5 };
  return [
    ['usual', section()],
    [
      'washer and button head, refused',
      section({ screw: { state: 'refused', washer, head: { ...head, shape: 'button', height: 1.65 } } }),
    ],
    [
      'countersunk',
      section({ screw: { head: { ...head, shape: 'countersunk', diameter: 6.72, height: 1.86 } } }),
    ],
    [
      'printed lid on plastic',
      section({ seat: 'on-plastic', clamped: { kind: 'printed', clearanceHole: 5.5 } }),
    ],
    [
      'printed lid with a wide spacer and a washer',
      section({
        screw: { washer },
        clamped: { kind: 'printed', sleeve: { outsideDiameter: 14.2, name: 'Steel S235' } },
      }),
    ],
    [
      'countersunk into a spacer',
      section({
        screw: { head: { ...head, shape: 'countersunk', diameter: 6.72, height: 1.86 } },
        clamped: { kind: 'printed', sleeve: { outsideDiameter: 5.4, name: 'Aluminium' } },
      }),
    ],
    ['sunk a little', section({ seat: 'on-plastic', insert: { sunk: 0.15 }, hole: { depth: 7.4 } })],
    [
      'sunk',
      section({ seat: 'on-plastic', insert: { sunk: 1.7 }, hole: { depth: 8.8 }, host: { floor: 2.5 } }),
    ],
    ['no floor', section({ host: { thickness: 7.2, floor: 0 } })],
    ['thick lid and floor', section({ clamped: { thickness: 23 }, host: { thickness: 61, floor: 53.8 } })],
    [
      'across the build, solid',
      section({
        host: { axis: 'across-build', infill: { density: 1, family: 'prismatic', pattern: 'grid' } },
      }),
    ],
    [
      'no infill, cold',
      section({
        insert: { remelted: false },
        host: { infill: { density: 0, family: 'cellular', pattern: 'gyroid' } },
      }),
    ],
    ['measured wall', section({ host: { wallMeasured: true, wallThickness: 1.73 } })],
    ['screw too long for the hole', section({ screw: { length: 30 } })],
  ];
}

/** The combinations and the single cases. */
export const sectionGrid = () => [...combinedSections(), ...oddSections()];
