import { foundFigures } from '../../../core/hole-finding/found-figures.ts';
import type { FoundHole } from '../../../core/hole-finding/hole.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { diameterNumber, lengthNumber } from '../../../wording/amount.ts';
import { endsText, LIE_NAMES, leanText } from '../../../wording/solids.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './hole-finder.module.css';

const COLUMNS = 9;

interface FoundTableProps {
  readonly holes: readonly FoundHole[];
  /** Told of the hole to use, and its number in the list. */
  readonly onUse: (hole: FoundHole, number: number) => void;
}

/** The holes of a part, each to be taken over. */
export function FoundTable({ holes, onUse }: FoundTableProps) {
  return (
    <>
      <div className={styles.scroll}>
        <table className={styles.holes}>
          <caption className="out-of-sight">Holes of the part</caption>
          <thead>
            <tr>
              <th scope="col">hole</th>
              <th scope="col">
                ⌀ across corners, <span className={styles.unit}>as drawn, mm</span>
              </th>
              <th scope="col">
                across flats, <span className={styles.unit}>mm</span>
              </th>
              <th scope="col">
                deep, <span className={styles.unit}>mm</span>
              </th>
              <th scope="col">facets</th>
              <th scope="col">axis</th>
              <th scope="col">ends</th>
              <th scope="col">
                mouth at <span className={styles.unit}>x, y, z, mm</span>
              </th>
              <th scope="col">
                <span className="out-of-sight">Take it over</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {holes
              .map((hole, at) => ({ hole, number: at + 1 }))
              .map(({ hole, number }) => (
                <HoleRow key={number} hole={hole} number={number} onUse={onUse} />
              ))}
          </tbody>
        </table>
      </div>
      <p className={styles.quiet}>
        Depths are from the face, with a chamfer; a countersink and the bores of other diameters on the same
        axis are not in them. A bore comes as a polygon. Where your program lays its flats on the drawn
        circle, and not its corners, enter the width across flats above.
      </p>
    </>
  );
}

interface HoleRowProps {
  readonly hole: FoundHole;
  readonly number: number;
  readonly onUse: FoundTableProps['onUse'];
}

function HoleRow({ hole, number, onUse }: HoleRowProps) {
  const { cornerDiameter, acrossFlats, depth, lean, mouth } = foundFigures(hole);
  const slot = `found hole ${number}`;
  const shown = (of: Derived, text: string, what: string) => (
    <ComputedValue derived={of} text={text} label={`Hole ${number}, ${what}, ${text} mm`} />
  );
  const length = (of: Derived, what: string) => shown(of, lengthNumber(of.value), what);
  return (
    <DerivationRow slot={slot}>
      <tr>
        <td>{number}</td>
        <th scope="row">
          {shown(cornerDiameter, diameterNumber(cornerDiameter.value), 'diameter across corners')}
        </th>
        <td>{shown(acrossFlats, diameterNumber(acrossFlats.value), 'diameter across flats')}</td>
        <td>{length(depth, 'depth')}</td>
        <td>{hole.facets}</td>
        <td>
          {LIE_NAMES[hole.lie]}
          {hole.lie === 'oblique' && (
            <>
              {', '}
              <ComputedValue
                derived={lean}
                text={leanText(hole)}
                label={`Hole ${number}, lean of the axis, ${leanText(hole)}`}
              />
            </>
          )}
        </td>
        <td>{endsText(hole)}</td>
        <td>
          {length(mouth.x, 'x of the mouth')}, {length(mouth.y, 'y of the mouth')},{' '}
          {length(mouth.z, 'z of the mouth')}
        </td>
        <td>
          <button
            type="button"
            className="press"
            aria-label={`Use hole ${number}, ${diameterNumber(hole.cornerDiameter)} mm`}
            onClick={() => onUse(hole, number)}
          >
            Use
          </button>
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
