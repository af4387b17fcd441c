import { useRef } from 'react';
import { LIMITS } from '../../../storage/limits.ts';
import { screwPlace } from '../../state/group-quantities.ts';
import { withScrew } from '../../state/proposals.ts';
import { useSheetValue } from '../../state/sheet-context.ts';
import { DocumentQuantity } from '../document-quantity.tsx';
import { useDocumentField } from '../use-document-field.ts';
import styles from './given.module.css';

const PLACE = 'given';
const PATH = 'joint.pattern.positions_mm';

/** The place of every screw of a free pattern; screws are added and taken out. */
export function FreePositions() {
  const pattern = useSheetValue(({ journal }) => journal.present.joint.pattern);
  const list = useDocumentField(PATH, PLACE);
  const body = useRef<HTMLTableSectionElement>(null);
  if (pattern.kind !== 'free') return null;
  const places = pattern.positions_mm;
  const focus = (row: number) => {
    requestAnimationFrame(() => body.current?.rows[row]?.querySelector('input')?.focus());
  };
  const add = () => {
    list.take(withScrew(places));
    focus(places.length);
  };
  const takeOut = (index: number) => {
    list.take(places.filter((_, at) => at !== index));
    focus(Math.min(index, places.length - 2));
  };
  return (
    <>
      <table className={styles.places}>
        <caption>Places from the point that the loads are measured from</caption>
        <thead>
          <tr>
            <th scope="col">Screw</th>
            <th scope="col">x, mm</th>
            <th scope="col">y, mm</th>
            <td />
          </tr>
        </thead>
        <tbody ref={body}>
          {places.map((_, index) => (
            <tr key={screwPlace(index, 'x').path}>
              <th scope="row">{index + 1}</th>
              <td>
                <DocumentQuantity quantity={screwPlace(index, 'x')} place={PLACE} layout="bare" />
              </td>
              <td>
                <DocumentQuantity quantity={screwPlace(index, 'y')} place={PLACE} layout="bare" />
              </td>
              <td>
                {places.length > LIMITS.patternCount.least ? (
                  <button
                    type="button"
                    className="press"
                    aria-label={`Take out screw ${index + 1}`}
                    onClick={() => takeOut(index)}
                  >
                    Take out
                  </button>
                ) : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {list.problem ? (
        <p className={styles.objection} role="alert">
          <b>Not taken.</b> {list.problem.message}{' '}
          <button type="button" className="press" onClick={list.giveUp}>
            Keep what it was
          </button>
        </p>
      ) : null}
      {places.length < LIMITS.patternCount.greatest ? (
        <p className={styles.remark}>
          <button type="button" className="press" onClick={add}>
            Add a screw
          </button>
        </p>
      ) : null}
    </>
  );
}
