import { bondFactor, testedBond } from '../pull-out/bond.ts';
import type { NoticeCode } from './assessment.ts';
import type { NoticeRule } from './notice-rule.ts';

/** Length below which an insert is called short, in thread diameters: 3 mm of M3 is. */
const SHORT_INSERT_DIAMETERS = 1.1;
/** Readings that differ by more than this many permissible errors are looked at again. */
const SCATTER_IN_PERMISSIBLE_ERRORS = 3;

const spreadOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** What to know about the insert and its readings. */
export const INSERT_NOTICES = {
  'cold-setting-may-split': ({ joint }) =>
    joint.setting === 'heat-set' ? undefined : { setting: joint.setting },
  'short-insert': ({ joint, found }) => {
    const length = found.dimensions.length.estimate.value;
    const least = SHORT_INSERT_DIAMETERS * joint.screw.thread.nominalDiameter;
    return length < least ? { length, least, thread: joint.screw.thread.designation } : undefined;
  },
  'readings-scatter': ({ insert }) => {
    const features = [insert.knurlDiameter, insert.pilotDiameter, insert.length];
    const spread = Math.max(...features.map(({ values }) => spreadOf(values)));
    const { permissibleError } = insert.knurlDiameter;
    return permissibleError > 0 && spread > SCATTER_IN_PERMISSIBLE_ERRORS * permissibleError
      ? { spread, permissibleError }
      : undefined;
  },
  'knurled-length-estimated': ({ insert, found }) =>
    insert.knurledLength === undefined
      ? { knurledLength: found.dimensions.knurledLength.estimate.value }
      : undefined,
  'bond-untested': ({ joint }) => (joint.tested ? undefined : { setting: joint.setting }),
  'bond-tested': ({ joint, insert, found }) => {
    const knurl = found.limits.find(({ mode }) => mode === 'knurl-shear')?.capacity;
    if (joint.tested === undefined || knurl === undefined) return undefined;
    const tested = joint.tested.bySize.get(insert.id) ?? joint.tested.unpulled;
    const bond = testedBond(tested).factor.value;
    return {
      coupons: tested.coupons,
      broke: tested.broke,
      own: joint.tested.bySize.has(insert.id) ? 'pulled' : 'other-sizes',
      before: (knurl.median.value * bondFactor(joint.setting).value) / bond,
      after: knurl.median.value,
      characteristic: knurl.characteristic.value,
    };
  },
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
