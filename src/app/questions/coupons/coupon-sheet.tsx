import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { decimalText, diameterNumber, lengthText, percentText } from '../../../wording/amount.ts';
import { COUPON_NAMES, onBedText, TEST_CAUTIONS } from '../../../wording/coupons.ts';
import { SETTING_NAMES } from '../../../wording/names.ts';
import { factsOf } from './coupon-facts.ts';
import styles from './coupon-sheet.module.css';

/** Empty lines for readings of a coupon with an insert. */
const LINES = 6;

interface CouponSheetProps {
  readonly coupon: Coupon;
  readonly joint: Joint;
  readonly onClose: () => void;
}

/** One page that goes to the printer and the bench: how to print, which number is what, and room to write. */
export function CouponSheet({ coupon, joint, onClose }: CouponSheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  const name = COUPON_NAMES[coupon.kind];
  // Beside the page and not within it, so that print can leave the page out.
  return createPortal(
    <dialog ref={dialog} className={styles.sheet} aria-labelledby="coupon-sheet-title" onClose={onClose}>
      <div className={styles.bar}>
        <button type="button" className="go" onClick={() => window.print()}>
          Print this sheet
        </button>
        <button type="button" className="go" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <h2 id="coupon-sheet-title">{name}</h2>
      <h3>How to print it</h3>
      <ul>
        {settingsOf(coupon, joint).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h3>What it is</h3>
      <ul>
        {factsOf(coupon).map((fact) =>
          'text' in fact ? (
            <li key={fact.name}>
              {fact.name}: {fact.text}
            </li>
          ) : fact.derived.unit === 'mm' ? (
            <li key={fact.name}>
              {fact.name}: {lengthText(fact.derived.value)}
            </li>
          ) : null,
        )}
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
    </dialog>,
    document.body,
  );
}

function settingsOf(coupon: Coupon, { host }: Joint): readonly string[] {
  const wall =
    host.wall.kind === 'lines'
      ? `${host.wall.count} wall lines of ${lengthText(host.wall.lineWidth)}`
      : `a wall of ${lengthText(host.wall.thickness)}`;
  return [
    `${host.material.name}, layers of ${lengthText(host.layerHeight)}, ${wall}, ${percentText(host.infill.density)} ${host.infill.pattern}.`,
    `As it lies in the file, ${onBedText(coupon.onBed)}: the insert’s axis is then ${coupon.axis === 'along-build' ? 'upright' : 'along the bed'}, as in the part.`,
    'Same printer, filament, nozzle and temperatures as for the part; hole compensation of the slicer as for the part.',
  ];
}

function GaugeLines({ coupon: { bores } }: { readonly coupon: Extract<Coupon, { kind: 'hole-gauge' }> }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">number</th>
          <th scope="col">drawn ⌀ mm</th>
          <th scope="col">measured ⌀ mm, three directions</th>
          <th scope="col">pilot drops in</th>
        </tr>
      </thead>
      <tbody>
        {bores.map(({ number, drawn }) => (
          <tr key={number}>
            <th scope="row">{decimalText(number, 0)}</th>
            <td>{diameterNumber(drawn)}</td>
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function TestLines({
  coupon,
  joint,
}: {
  readonly coupon: Exclude<Coupon, { kind: 'hole-gauge' }>;
  readonly joint: Joint;
}) {
  const pulls = coupon.kind === 'pull-coupon';
  return (
    <table>
      <caption>
        Inserts {SETTING_NAMES[joint.setting]};{' '}
        {pulls ? 'ring round the insert, pull along its axis, slowly' : 'flat face and rim apart'}
      </caption>
      <thead>
        <tr>
          <th scope="col">test</th>
          <th scope="col">bore ⌀ mm</th>
          <th scope="col">{pulls ? 'kg' : 'where: flat or rim'}</th>
          <th scope="col">{pulls ? 'lever' : 'N·m'}</th>
          <th scope="col">how it ended</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: LINES }, (_, at) => at + 1).map((line) => (
          <tr key={line}>
            <th scope="row">{line}</th>
            <td />
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
