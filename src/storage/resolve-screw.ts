import type { Catalogue } from '../core/joint/catalogue.ts';
import type { BiggerScrew, Screw } from '../core/screws/screw.ts';
import type { Thread } from '../core/screws/thread.ts';
import type { JointDocument } from './document.ts';
import type { Faults } from './resolve.ts';

type GivenJoint = JointDocument['joint'];

/** Conditions and classes that are proposed where a torque window is closed. */
const SLIPPERIER_CONDITION = 'oiled';
const STRONGEST_CLASS = '12.9';

/** The screw of a document with its rows; faults are reported at their keys. */
export function resolveScrew(given: GivenJoint, catalogue: Catalogue, faults: Faults): Screw | undefined {
  const { screw } = given;
  const pick = <Row>(
    rows: readonly Row[],
    key: string,
    value: string,
    idOf: (row: Row) => string,
  ): Row | undefined => {
    const row = rows.find((candidate) => idOf(candidate) === value);
    if (row === undefined) {
      const choices = [...new Set(rows.map(idOf))].join(', ');
      faults.add(`joint.screw.${key}`, 'unknown-row', { value, choices });
    }
    return row;
  };
  const thread = pick(catalogue.threads, 'thread', screw.thread, (row) => row.id);
  const propertyClass = pick(
    catalogue.propertyClasses,
    'propertyClass',
    screw.propertyClass,
    (row) => row.id,
  );
  const friction = pick(catalogue.frictionConditions, 'friction', screw.friction, (row) => row.id);
  const known = pick(catalogue.heads, 'head', screw.head, (row) => row.standard);
  if (!thread || !propertyClass || !friction || !known) return undefined;
  const head = catalogue.heads.find((row) => row.standard === screw.head && row.thread === thread.id);
  if (!head) {
    const made = catalogue.heads.filter((row) => row.standard === screw.head).map((row) => row.thread);
    faults.add('joint.screw.head', 'no-such-head', {
      head: screw.head,
      thread: thread.designation,
      made: made.join(', '),
    });
    return undefined;
  }
  const washer = catalogue.washers.find((row) => row.thread === thread.id);
  if (screw.washer === 'plain' && !washer) {
    faults.add('joint.screw.washer', 'no-such-washer', { thread: thread.designation });
    return undefined;
  }
  if (screw.washer === 'plain' && head.shape === 'countersunk') {
    faults.add('joint.screw.washer', 'no-such-washer', {
      thread: `${thread.designation} under ${head.standard}`,
    });
    return undefined;
  }
  const lengths = catalogue.screwLengths.find((row) => row.thread === thread.id)?.lengths ?? [];
  const clearance = given.clamped.clearanceHole_mm;
  if (clearance <= thread.nominalDiameter) {
    faults.add('joint.clamped.clearanceHole_mm', 'clearance-below-screw', {
      value: clearance,
      screw: thread.nominalDiameter,
      medium: thread.clearanceHoles.medium,
    });
  }
  const bearing = screw.washer === 'plain' && washer ? washer.outsideDiameter : head.bearingDiameter;
  if (clearance >= bearing) {
    faults.add('joint.clamped.clearanceHole_mm', 'clearance-above-head', { value: clearance, bearing });
  }
  const breakingTorque = catalogue.breakingTorques.find(
    (row) => row.thread === thread.id && row.propertyClass === propertyClass.id,
  );
  const oiled = catalogue.frictionConditions.find((row) => row.id === SLIPPERIER_CONDITION);
  const strongest = catalogue.propertyClasses.find((row) => row.id === STRONGEST_CLASS);
  return {
    thread,
    head,
    propertyClass,
    friction,
    ...(screw.washer === 'plain' && washer ? { washer } : {}),
    ...(screw.length_mm === undefined ? {} : { fixedLength: screw.length_mm }),
    standardLengths: lengths,
    ...(breakingTorque ? { breakingTorque } : {}),
    alternatives: {
      ...(oiled ? { friction: oiled } : {}),
      ...(strongest ? { propertyClass: strongest } : {}),
      ...(washer ? { washer } : {}),
      ...biggerScrew(catalogue, thread, screw.head),
    },
  };
}

/** The next larger thread of the same system with the same head, where its rows are all there. */
function biggerScrew(
  catalogue: Catalogue,
  thread: Thread,
  standard: string,
): { readonly bigger?: BiggerScrew } {
  const larger = catalogue.threads.filter(
    (row) => row.system === thread.system && row.nominalDiameter > thread.nominalDiameter,
  );
  const [next] = [...larger].sort((one, other) => one.nominalDiameter - other.nominalDiameter);
  const head = catalogue.heads.find((row) => row.standard === standard && row.thread === next?.id);
  if (!next || !head) return {};
  const washer = catalogue.washers.find((row) => row.thread === next.id);
  const standardLengths = catalogue.screwLengths.find((row) => row.thread === next.id)?.lengths ?? [];
  return { bigger: { thread: next, head, standardLengths, ...(washer ? { washer } : {}) } };
}
