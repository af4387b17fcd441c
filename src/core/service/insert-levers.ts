import { type Lever, once, scaled, shifted } from './lever.ts';

const LENGTH_STEP = 0.5;
const KNURL_STEP = 0.2;

/** What another insert can change: length, knurl, side, thread. */
export const INSERT_LEVERS: readonly Lever[] = [
  {
    id: 'insert-length',
    unit: 'mm',
    size: LENGTH_STEP,
    remedySteps: 12,
    move: ({ joint, insert }, steps) => {
      const by = LENGTH_STEP * steps;
      const length = shifted(insert.length, by);
      const knurled = insert.knurledLength ? { knurledLength: shifted(insert.knurledLength, by) } : {};
      return { joint, insert: { ...insert, length, ...knurled } };
    },
  },
  {
    id: 'knurl-diameter',
    unit: 'mm',
    size: KNURL_STEP,
    remedySteps: 8,
    move: ({ joint, insert }, steps) => {
      // A wider insert of the same make: its pilot grows with it, the bite stays.
      const by = KNURL_STEP * steps;
      const pilotDiameter = shifted(insert.pilotDiameter, by);
      const knurlDiameter = shifted(insert.knurlDiameter, by);
      return { joint, insert: { ...insert, knurlDiameter, pilotDiameter } };
    },
  },
  {
    id: 'far-side',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { joint } = subject;
      // A hole that is there is open to its own side.
      if (joint.insertSide === 'far-side' || joint.holes.existing) return undefined;
      const { seatOverride: _, ...found } = joint;
      const { fixedLength: __, ...screw } = joint.screw;
      return { ...subject, joint: { ...found, insertSide: 'far-side', gap: 0, sunk: 0, screw } };
    }),
  },
  {
    id: 'bigger-thread',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once(({ joint, insert }) => {
      const { bigger } = joint.screw.alternatives;
      if (!bigger || (joint.screw.washer && !bigger.washer)) return undefined;
      const ratio = bigger.thread.nominalDiameter / joint.screw.thread.nominalDiameter;
      const { fixedLength: _, washer: __, breakingTorque: ___, ...screw } = joint.screw;
      const { sleeve, clearanceHole } = joint.clamped;
      const hole = bigger.thread.clearanceHoles.medium;
      return {
        joint: {
          ...joint,
          clamped: {
            ...joint.clamped,
            clearanceHole: hole,
            ...(sleeve
              ? { sleeve: { ...sleeve, outsideDiameter: hole + sleeve.outsideDiameter - clearanceHole } }
              : {}),
          },
          screw: {
            ...screw,
            ...bigger,
            ...(joint.screw.washer && bigger.washer ? { washer: bigger.washer } : {}),
          },
        },
        insert: {
          ...insert,
          thread: bigger.thread,
          knurlDiameter: scaled(insert.knurlDiameter, ratio),
          pilotDiameter: scaled(insert.pilotDiameter, ratio),
          length: scaled(insert.length, ratio),
          ...(insert.knurledLength ? { knurledLength: scaled(insert.knurledLength, ratio) } : {}),
        },
      };
    }),
  },
];
