import { decimalText, forceNumber } from '../../wording/amount.ts';
import styles from './pattern.module.css';
import type { PlanInput, PlanScrew } from './plan-input.ts';
import { pullWords } from './plan-words.ts';

/** More screws than this are folded away. */
const LONGEST_OPEN = 12;
const place = (value: number) => decimalText(value, 1);

/** Every screw of the plan with its place and what it has to hold. */
export function ScrewList({ input }: { readonly input: PlanInput }) {
  return (
    <details className={styles.list} open={input.screws.length <= LONGEST_OPEN}>
      <summary>Each screw</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Screw</th>
            <th scope="col">x, mm</th>
            <th scope="col">y, mm</th>
            <th scope="col">Pull, N</th>
            <th scope="col">Shear, N</th>
          </tr>
        </thead>
        <tbody>
          {input.screws.map((screw) => (
            <Row key={screw.number} screw={screw} />
          ))}
        </tbody>
      </table>
    </details>
  );
}

const Row = ({ screw }: { readonly screw: PlanScrew }) => (
  <tr data-worst={screw.hasMostPull || screw.hasMostShear || undefined}>
    <th scope="row">{screw.number}</th>
    <td>{place(screw.x)}</td>
    <td>{place(screw.y)}</td>
    <td>
      {screw.hasMostPull ? <b>most </b> : null}
      {pullWords(screw.pull)}
    </td>
    <td>
      {screw.hasMostShear ? <b>most </b> : null}
      {forceNumber(screw.shear)}
    </td>
  </tr>
);
