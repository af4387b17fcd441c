import { type Derived, entry } from '../sources/derived.ts';
import type { NoticeCode } from './assessment.ts';
import type { NoticeRule } from './notice-rule.ts';
import { tighten } from './tightening.ts';

/** Length below which an insert is called short, in thread diameters: 3 mm of M3 is. */
const SHORT_INSERT_DIAMETERS = 1.1;
/** Readings that differ by more than this many permissible errors are looked at again. */
const SCATTER_IN_PERMISSIBLE_ERRORS = 3;

/** How far readings of one feature lie apart, mm. */
function spreadOf(values: readonly number[]): Derived {
  const [greatest, least] = [Math.max(...values), Math.min(...values)];
  return {
    symbol: 'Δ_x',
    value: greatest - least,
    unit: 'mm',
    formula: 'x_max − x_min',
    entries: [entry('x_max', greatest, 'mm'), entry('x_min', least, 'mm')],
    source: 'your-measurement',
    standing: 'measured',
  };
}

/** Least length of an insert in use, mm. */
const leastLength = (d: number): Derived => ({
  symbol: 'L_min',
  value: SHORT_INSERT_DIAMETERS * d,
  unit: 'mm',
  formula: `${SHORT_INSERT_DIAMETERS} · d`,
  entries: [entry('d', d, 'mm')],
  source: 'trade-practice',
  standing: 'common-practice',
});

/** What to know about the insert and its readings. */
export const INSERT_NOTICES = {
  'cold-setting-may-split': ({ joint }) =>
    joint.setting === 'heat-set' ? undefined : { setting: joint.setting },
  'short-insert': ({ joint, found }) => {
    const length = found.dimensions.length.estimate;
    const least = leastLength(joint.screw.thread.nominalDiameter);
    return length.value < least.value ? { length, least, thread: joint.screw.thread.designation } : undefined;
  },
  'readings-scatter': ({ insert }) => {
    const features = [insert.knurlDiameter, insert.pilotDiameter, insert.length];
    const [spread] = features
      .map(({ values }) => spreadOf(values))
      .toSorted((one, other) => other.value - one.value);
    const { permissibleError } = insert.knurlDiameter;
    return spread && permissibleError > 0 && spread.value > SCATTER_IN_PERMISSIBLE_ERRORS * permissibleError
      ? { spread, permissibleError }
      : undefined;
  },
  'knurled-length-estimated': ({ insert, found }) =>
    insert.knurledLength === undefined
      ? { knurledLength: found.dimensions.knurledLength.estimate }
      : undefined,
  'bond-untested': ({ joint }) => (joint.tested ? undefined : { setting: joint.setting }),
  'bond-tested': ({ joint, insert, found }) => {
    const knurl = found.limits.find(({ mode }) => mode === 'knurl-shear')?.capacity;
    if (joint.tested === undefined || knurl === undefined) return undefined;
    const { tested: all, ...untested } = joint;
    const tested = all.bySize.get(insert.id) ?? all.unpulled;
    const before = tighten(untested, insert).actives.find(({ mode }) => mode === 'knurl-shear');
    if (before === undefined) return undefined;
    return {
      coupons: tested.coupons,
      broke: tested.broke,
      own: all.bySize.has(insert.id) ? 'pulled' : 'other-sizes',
      before: before.capacity.median,
      after: knurl.median,
      characteristic: knurl.characteristic,
    };
  },
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
