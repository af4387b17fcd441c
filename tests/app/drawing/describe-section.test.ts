import { describe, expect, test } from 'vitest';
import { describeSection } from '../../../src/app/drawing/describe-section.ts';
import { section } from './section-inputs.ts';

describe('describeSection', () => {
  test('says the usual joint in full', () => {
    expect(describeSection(section())).toBe(
      'Section through the joint: an M3 screw with a cylindrical head, 8 mm long, goes through 2.7 mm of aluminium ' +
        'with a clearance hole of 3.4 mm into a brass insert of knurl diameter 4.93 and length 5.3 mm in PETG. ' +
        'The clamped part bears on the insert, so the clamp force stays in metal. The hole is drawn 4.55 mm wide ' +
        'and 7.2 mm deep, prints 4.26 mm, and leaves a floor of 4.1 mm; 5 walls of 0.43 mm surround it, ' +
        'with 23 % gyroid infill beyond.',
    );
  });

  test('says that the force runs through the plastic over a gap', () => {
    const words = describeSection(section({ gap: 0.6, seat: 'over-gap' }));
    expect(words).toContain('over a gap of 0.6 mm into a brass insert');
    expect(words).toContain('does not reach the insert, so the clamp force pulls at it through the plastic');
  });

  test('says from which side, how deep, and what is left for an insert set from behind', () => {
    const words = describeSection(
      section({ seat: 'far-side', insert: { side: 'far-side', sunk: 0.7 }, host: { floor: 5.1 } }),
    );
    expect(words).toContain('in PETG, set from the far side, 0.7 mm below the face.');
    expect(words).toContain('draws the insert into the part from behind');
    expect(words).toContain('leaves a shoulder of 5.1 mm');
  });

  test('says when no screw fits, a boss stands free, a wall was measured, and no floor is left', () => {
    const words = describeSection(
      section({
        seat: 'on-plastic',
        screw: { state: 'refused', length: 9 },
        host: { bossDiameter: 10.3, wallMeasured: true, wallThickness: 1.87, floor: 0 },
      }),
    );
    expect(words).toContain('for which no length fits, drawn 9 mm long,');
    expect(words).toContain('a measured wall of 1.87 mm surrounds it in a boss of 10.3 mm');
    expect(words).toContain('leaves no floor');
    expect(words).toContain('bears on the plastic');
  });
});
