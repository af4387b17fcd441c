import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import {
  capitalised,
  chanceText,
  derivedText,
  diameterNumber,
  lengthText,
  percentText,
} from '../../../wording/amount.ts';
import { nameOfGivenHole } from '../../../wording/reasons.ts';
import { meaningOf } from '../../../wording/symbols.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DrawingRow } from './drawing-row.tsx';
import styles from './what-hole.module.css';

/** A computed number of the table; its label is what its symbol means. */
function Value({ of, text = derivedText(of) }: { readonly of: Derived; readonly text?: string }) {
  return <ComputedValue derived={of} text={text} label={`${capitalised(meaningOf(of))}, ${text}`} />;
}

const diameter = (derived: Derived) => `⌀ ${diameterNumber(derived.value)}\u00a0mm`;

/** All that the drawing needs, line by line, each number with its way. */
export function DrawingTable({
  joint,
  assessment,
}: {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}) {
  const { hole } = assessment;
  const { existing } = hole;
  const { smallest, largest, chance } = hole.window;
  const { wall } = joint.host;
  const farSide = joint.insertSide === 'far-side';
  return (
    <table className={styles['drawing']}>
      <caption>{existing ? 'The hole as it is given' : 'For the drawing'}</caption>
      <tbody>
        <DrawingRow
          id="drawn"
          name={existing ? nameOfGivenHole(existing) : 'Hole to draw'}
          remark={existing ? 'given, not proposed' : `rounded to ${lengthText(joint.holes.step)}`}
        >
          <b>
            <Value of={hole.drawn} text={diameter(hole.drawn)} />
          </b>
        </DrawingRow>
        <DrawingRow
          id="bore"
          name="Bore as printed"
          remark={
            <>
              fits from <Value of={smallest} text={diameterNumber(smallest.value)} />, where the pilot still
              drops in, to <Value of={largest} text={diameterNumber(largest.value)} />, where the knurl still
              bites: <Value of={chance} text={chanceText(chance.value)} /> bores
            </>
          }
        >
          <Value of={hole.boreAsPrinted} text={diameter(hole.boreAsPrinted)} />
        </DrawingRow>
        <DrawingRow
          id="depth"
          name={existing && existing.depth === undefined ? 'Depth needed' : 'Depth'}
          remark={
            existing?.depth !== undefined ? (
              'given, not proposed'
            ) : farSide ? (
              'the insert alone: the screw comes through from the other side'
            ) : (
              <>insert, melt and the screw’s tip, in whole layers of {lengthText(joint.host.layerHeight)}</>
            )
          }
        >
          <b>
            <Value of={hole.depth} />
          </b>
        </DrawingRow>
        <DrawingRow id="chamfer" name="Mouth" remark="a chamfer that centres the insert, no countersink">
          <Value of={hole.chamfer} text={`${derivedText(hole.chamfer)} × 45°`} />
        </DrawingRow>
        <DrawingRow id="boss" name="Boss, at least" remark={bossRemark(joint)}>
          <Value of={hole.bossDiameter} text={`⌀ ${derivedText(hole.bossDiameter)}`} />
        </DrawingRow>
        <DrawingRow
          id="wall"
          name="Wall round the hole"
          remark={
            <>
              {wall.kind === 'lines' ? `from your ${wall.count} lines` : 'as measured'}; that boss asks for{' '}
              <Value of={hole.wallLines} /> lines of {lengthText(wall.lineWidth)}
            </>
          }
        >
          <Value of={hole.wall} />
        </DrawingRow>
        <DrawingRow
          id="melt"
          name="Melt"
          remark={
            <>
              fills <Value of={hole.meltHeight} /> of the bore under the insert
            </>
          }
        >
          <Value of={hole.meltVolume} />
        </DrawingRow>
        <DrawingRow
          id="floor"
          name={farSide ? 'Shoulder left' : 'Floor left'}
          remark={`in a part ${lengthText(joint.host.thickness)} high`}
        >
          <Value of={hole.floor} />
        </DrawingRow>
        <DrawingRow
          id="bite"
          name="Bite of the knurl"
          remark={
            <>
              a side; <Value of={hole.biteFactor} text={percentText(hole.biteFactor.value)} /> of its full
              hold at the bore to be expected
            </>
          }
        >
          <Value of={hole.bite} />
        </DrawingRow>
      </tbody>
    </table>
  );
}

const bossRemark = ({ host }: Joint): string =>
  host.bossDiameter === undefined
    ? 'or as much material round the insert'
    : `yours is ${lengthText(host.bossDiameter)}`;
