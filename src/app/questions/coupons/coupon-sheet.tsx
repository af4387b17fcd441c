import type { Joint } from '../../../core/joint/joint.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { lengthText, percentText } from '../../../wording/amount.ts';
import { COUPON_NAMES, lyingText, placesOfCoupon, TEST_CAUTIONS } from '../../../wording/coupons.ts';
import { plainText, type Sentence } from '../../../wording/sentence.ts';
import { BenchSheet } from '../../shell/bench-sheet.tsx';
import { factsOf } from './coupon-facts.ts';
import { GaugeLines, TestLines } from './sheet-lines.tsx';

interface CouponSheetProps {
  readonly coupon: Coupon;
  readonly joint: Joint;
  /** Name of the joint on the sheet. */
  readonly jointName: string;
  readonly onClose: () => void;
}

/** One page that goes to the printer and the bench: how to print, which number is what, and room to write. */
export function CouponSheet({ coupon, joint, jointName, onClose }: CouponSheetProps) {
  const name = COUPON_NAMES[coupon.kind];
  return (
    <BenchSheet title={name} onClose={onClose}>
      <p>
        {'label' in coupon ? `Number ${coupon.label.number}. ` : ''}
        {jointName}. Printed on, with, by:
      </p>
      <h3>How to print it</h3>
      <ul>
        {settingsOf(coupon, joint).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h3>What it is</h3>
      <ul>
        {factsOf(coupon)
          .filter(({ sentence }) => sentence.every(isLength))
          .map(({ name: fact, sentence }) => (
            <li key={fact}>
              {fact}: {plainText(sentence)}
            </li>
          ))}
      </ul>
      <h3>Where it goes</h3>
      <ul>
        {placesOfCoupon(coupon).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h3>What to write down</h3>
      {coupon.kind === 'hole-gauge' ? (
        <GaugeLines coupon={coupon} />
      ) : (
        <TestLines coupon={coupon} joint={joint} />
      )}
      <h3>At the bench</h3>
      <ul>
        {TEST_CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </BenchSheet>
  );
}

/** Whoever stands at the bench measures lengths; the volume is for the slicer. */
const isLength = (part: Sentence[number]): boolean =>
  typeof part === 'string' || typeof part.derived === 'function' || part.derived.unit === 'mm';

function settingsOf(coupon: Coupon, { host }: Joint): readonly string[] {
  const wall =
    host.wall.kind === 'lines'
      ? `${host.wall.count} wall lines of ${lengthText(host.wall.lineWidth)}`
      : `a wall of ${lengthText(host.wall.thickness)}`;
  return [
    `${host.material.name}, layers of ${lengthText(host.layerHeight)}, ${wall}, ${percentText(host.infill.density)} ${host.infill.pattern}.`,
    lyingText(coupon, host.axis),
    'Same printer, filament, nozzle and temperatures as for the part; hole compensation of the slicer as for the part.',
  ];
}
