import type { Joint } from '../../../core/joint/joint.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { decimalText, diameterNumber } from '../../../wording/amount.ts';
import { SETTING_NAMES } from '../../../wording/names.ts';

/** Empty lines for readings of a coupon with an insert. */
const LINES = 6;

/** Room to write the readings of a gauge, a line a bore. */
export function GaugeLines({
  coupon: { bores },
}: {
  readonly coupon: Extract<Coupon, { kind: 'hole-gauge' }>;
}) {
  return (
    <table>
      <caption>One line a bore; write down what you measure with</caption>
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

interface TestLinesProps {
  readonly coupon: Exclude<Coupon, { kind: 'hole-gauge' }>;
  readonly joint: Joint;
}

/** Room to write tests, numbered on from the number that the coupon bears. */
export function TestLines({ coupon, joint }: TestLinesProps) {
  const pulls = coupon.kind === 'pull-coupon';
  return (
    <table>
      <caption>
        Inserts {SETTING_NAMES[joint.setting]};{' '}
        {pulls
          ? 'a line a coupon: the reading of the scale when it broke, or the greatest it held'
          : 'a line a bore: the torque when it broke, or the greatest it held'}
      </caption>
      <thead>
        <tr>
          <th scope="col">{pulls ? 'test number' : 'test number, bore'}</th>
          <th scope="col">bore ⌀ mm</th>
          <th scope="col">reading, {pulls ? 'kg' : 'N·m'}</th>
          {pulls ? <th scope="col">lever</th> : null}
          <th scope="col">result: what broke, or held</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: LINES }, (_, at) => nameOfLine(coupon, at)).map((line) => (
          <tr key={line}>
            <th scope="row">{line}</th>
            <td />
            <td />
            {pulls ? <td /> : null}
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A pull coupon breaks once; a torque coupon has two bores. */
function nameOfLine({ kind, label }: TestLinesProps['coupon'], at: number): string {
  if (kind === 'pull-coupon') return decimalText(label.number + at, 0);
  return `${decimalText(label.number + Math.floor(at / 2), 0)}, ${at % 2 === 0 ? 'flat' : 'rim'}`;
}
