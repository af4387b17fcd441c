import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { admit } from '../../../src/app/state/admit.ts';
import { type Edit, withEdits } from '../../../src/app/state/edit.ts';
import { repairOf } from '../../../src/app/state/repairs.ts';
import { valueIn } from '../../../src/app/state/value-in.ts';
import { printerRecord } from '../../support/printers.ts';

/** What the sheet does with an edit that the door refuses: the repair of the first reason, then the door again. */
function repaired(edits: readonly Edit[]) {
  const wrong = withEdits(SENSOR_LID, edits);
  const refused = admit(wrong);
  const [refusal] = refused.kind === 'refused' ? refused.refusals : [];
  const repair = refusal && repairOf(refusal, (path) => valueIn(wrong, path));
  return {
    code: refusal?.code,
    label: repair?.label,
    after: repair && admit(withEdits(wrong, repair.edits)),
  };
}

describe('repairOf', () => {
  test('swaps a knurl that is thinner than its pilot', () => {
    const { label, after } = repaired([
      { path: 'drawer.0.knurlDiameter_mm', value: [4.21] },
      { path: 'drawer.0.pilotDiameter_mm', value: [5.03] },
    ]);
    expect(label).toBe('Swap them');
    expect(after).toMatchObject({
      kind: 'admitted',
      document: { drawer: [{ knurlDiameter_mm: [5.03], pilotDiameter_mm: [4.21] }, {}, {}, {}, {}, {}, {}] },
    });
  });
  test('swaps knurl and length', () => {
    const { code, after } = repaired([
      { path: 'drawer.0.knurlDiameter_mm', value: [3.1] },
      { path: 'drawer.0.pilotDiameter_mm', value: [3.05] },
    ]);
    expect(code).toBe('length-and-knurl-swapped');
    expect(after).toMatchObject({ kind: 'admitted' });
    expect(after?.kind === 'admitted' && after.document.drawer[0]?.length_mm).toEqual([3.1]);
  });
  test('takes inches as inches', () => {
    const { label, after } = repaired([{ path: 'drawer.0.length_mm', value: [0.2] }]);
    expect(label).toBe('Take it as inches');
    expect(after?.kind === 'admitted' && after.document.drawer[0]?.length_mm).toEqual([5.08]);
  });
  test.each([
    ['clearance-below-screw', 'joint.clamped.clearanceHole_mm', 2.9, 'Use ⌀ 3.4'],
    ['layer-above-line', 'joint.host.layerHeight_mm', 0.6, 'Swap them'],
  ])('mends %s', (code, path, value, label) => {
    const outcome = repaired([{ path, value }]);
    expect(outcome).toMatchObject({ code, label, after: { kind: 'admitted' } });
  });
  test.each([
    [
      'twist-on-one-point',
      'Let the load act at the screw',
      [{ path: 'joint.loads.moment_Nm.z', value: 0.4 }],
    ],
    ['twist-on-one-point', 'Let the load act at the screw', [{ path: 'joint.loads.at_mm.y', value: 12 }]],
    ['tilt-without-arm', 'Turn it about its edge', [{ path: 'joint.loads.moment_Nm.x', value: 0.4 }]],
    [
      'screw-beyond-edge',
      // 20 + 2 · 3.4, up to whole millimetres; the row has no extent along y.
      'Put the edge at 27',
      [
        {
          path: 'joint.pattern',
          value: { kind: 'rectangular', columns: 2, rows: 1, spacingX_mm: 40, spacingY_mm: 9 },
        },
        { path: 'joint.loads.pivot', value: { kind: 'edge', x_mm: 13, y_mm: 6 } },
      ],
    ],
    [
      'sleeve-not-wider',
      'Use ⌀ 5.4',
      [{ path: 'joint.clamped.sleeve', value: { material: 'steel', outsideDiameter_mm: 3.1 } }],
    ],
    ['seat-contradicts-side', 'Let the sizes decide', [{ path: 'joint.seat', value: 'far-side' }]],
  ])('mends %s: %s', (code, label, edits) => {
    expect(repaired(edits)).toMatchObject({ code, label, after: { kind: 'admitted' } });
  });
  test.each([
    [
      'hole-looks-like-radius',
      'Take it as a radius',
      { drawn_mm: 4.1, measured_mm: [1.96, 1.97] },
      [4.1, 3.92, 3.94],
    ],
    ['hole-looks-like-inches', 'Take it as inches', { drawn_mm: 6.5, measured_mm: [0.25] }, [6.5, 6.35]],
    ['hole-looks-like-inches', 'Take it as inches', { drawn_mm: 0.25, measured_mm: [6.1] }, [6.35, 6.1]],
    ['hole-swapped', 'Swap them', { drawn_mm: 4, measured_mm: [4.12] }, [4.12, 4]],
  ])('mends %s of a printed hole: %s', (code, label, wrong, then) => {
    const hole = {
      drawn_mm: 4,
      measured_mm: [3.85],
      instrument: 'pin-gauge' as const,
      axis: 'vertical' as const,
    };
    const others = [hole, { ...hole, drawn_mm: 4.6, measured_mm: [4.47] }, { ...hole, measured_mm: [3.87] }];
    const printers = [printerRecord({ holes: [...others, { ...hole, ...wrong }] })];
    const outcome = repaired([{ path: 'printers', value: printers }]);
    expect(outcome).toMatchObject({ code, label, after: { kind: 'admitted' } });
    const mended =
      outcome.after?.kind === 'admitted' ? outcome.after.document.printers[0]?.holes[3] : undefined;
    expect([mended?.drawn_mm, ...(mended?.measured_mm ?? [])]).toEqual(then);
  });
  test('leaves to the person which of several readings was swapped', () => {
    const hole = {
      drawn_mm: 4,
      measured_mm: [3.85],
      instrument: 'pin-gauge' as const,
      axis: 'vertical' as const,
    };
    const holes = [hole, { ...hole, measured_mm: [3.86] }, hole, { ...hole, measured_mm: [4.12, 4.13] }];
    const outcome = repaired([{ path: 'printers', value: [printerRecord({ holes })] }]);
    expect(outcome).toMatchObject({ code: 'hole-swapped', label: undefined });
  });
  test('leaves to the person what only the person can know', () => {
    expect(repaired([{ path: 'drawer.0.length_mm', value: [16] }])).toMatchObject({
      code: 'too-long',
      label: undefined,
    });
  });
});
