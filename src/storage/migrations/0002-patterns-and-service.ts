import type { Migration } from './migration.ts';

/** Version 2: a pattern of screws, loads at a point with moments, re-tightening, vibration, thread locking. */
export const patternsAndService: Migration = {
  to: 2,
  migrate: (document) => {
    const joint = recordIn(document, 'joint');
    const screw = recordIn(joint, 'screw');
    const loads = recordIn(joint, 'loads');
    return {
      ...document,
      version: 2,
      joint: {
        ...joint,
        screw: { ...screw, threadLocking: 'none' },
        pattern: { kind: 'single' },
        loads: {
          ...loads,
          shearAcross_N: 0,
          at_mm: { x: 0, y: 0, z: 0 },
          moment_Nm: { x: 0, y: 0, z: 0 },
          pivot: { kind: 'centroid' },
          retightenings: 0,
          vibration: 'none',
        },
      },
    };
  },
};

/** A part of a document that nobody has checked yet: what is no object is left for the schema to refuse. */
function recordIn(
  document: Readonly<Record<string, unknown>>,
  key: string,
): Readonly<Record<string, unknown>> {
  const value = document[key];
  return typeof value === 'object' && value !== null ? { ...value } : {};
}
