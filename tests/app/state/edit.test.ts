import { describe, expect, test } from 'vitest';
import { withEdits } from '../../../src/app/state/edit.ts';

const document = {
  joint: { gap_mm: 0, screw: { thread: 'M3' } },
  drawer: [{ id: 'a' }, { id: 'b', count: 4 }],
};

describe('withEdits', () => {
  test('replaces a value at its path and leaves the rest as it was', () => {
    expect(withEdits(document, [{ path: 'joint.gap_mm', value: 0.7 }])).toEqual({
      ...document,
      joint: { gap_mm: 0.7, screw: { thread: 'M3' } },
    });
    expect(document.joint.gap_mm).toBe(0);
  });
  test('shares what it does not touch', () => {
    const edited = withEdits(document, [{ path: 'joint.gap_mm', value: 0.7 }]);
    expect((edited as typeof document).drawer).toBe(document.drawer);
  });
  test('reaches into a list', () => {
    expect(withEdits(document, [{ path: 'drawer.1.count', value: 9 }])).toMatchObject({
      drawer: [{ id: 'a' }, { id: 'b', count: 9 }],
    });
  });
  test('takes an optional key out, and puts one in', () => {
    const out = withEdits(document, [{ path: 'drawer.1.count', value: undefined }]);
    expect(out).toEqual({ ...document, drawer: [{ id: 'a' }, { id: 'b' }] });
    expect(withEdits(out, [{ path: 'joint.screw.length_mm', value: 8 }])).toMatchObject({
      joint: { screw: { thread: 'M3', length_mm: 8 } },
    });
  });
  test('applies several in their order', () => {
    const edits = [
      { path: 'joint.gap_mm', value: 1 },
      { path: 'joint.gap_mm', value: 2 },
    ];
    expect(withEdits(document, edits)).toMatchObject({ joint: { gap_mm: 2 } });
  });
});
