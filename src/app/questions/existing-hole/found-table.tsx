import { depthFromFace, type FoundHole } from '../../../core/hole-finding/hole.ts';
import { diameterNumber, lengthNumber } from '../../../wording/amount.ts';
import { axisText, endsText, mouthText } from '../../../wording/solids.ts';
import styles from './hole-finder.module.css';

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
  return (
    <tr>
      <td>{number}</td>
      <th scope="row">{diameterNumber(hole.cornerDiameter)}</th>
      <td>{diameterNumber(hole.acrossFlats)}</td>
      <td>{lengthNumber(depthFromFace(hole))}</td>
      <td>{hole.facets}</td>
      <td>{axisText(hole)}</td>
      <td>{endsText(hole)}</td>
      <td>{mouthText(hole)}</td>
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
  );
}
