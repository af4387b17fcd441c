import type { ReactNode } from 'react';
import type { ExistingFinding } from '../../../core/joint/existing-finding.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { capitalised, chanceText, derivedText, forceText, percentText } from '../../../wording/amount.ts';
import {
  sentenceOfBore,
  sentenceOfDepth,
  sentenceOfVerdict,
  VERDICT_NAMES,
} from '../../../wording/existing-hole.ts';
import { meaningOf } from '../../../wording/symbols.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { BoreRuler } from './bore-ruler.tsx';
import styles from './existing-hole.module.css';

export interface VerdictProps {
  readonly finding: ExistingFinding;
  /** Of the insert. */
  readonly name: string;
}

/** What the hole is to the insert: in a word, in sentences, on a ruler, in numbers. */
export function Verdict({ finding, name }: VerdictProps) {
  return (
    <div className={styles['verdict']}>
      <p className={styles['word']}>{VERDICT_NAMES[finding.verdict]}</p>
      <DerivationRow slot="existing-why">
        <p className={styles['why']}>
          <Told sentence={sentenceOfBore(finding)} /> <Told sentence={sentenceOfVerdict(finding)} />
        </p>
        <DerivationSlot name="existing-why" />
      </DerivationRow>
      <BoreRuler finding={finding} />
      <Numbers finding={finding} name={name} />
    </div>
  );
}

function Value({ of, text = derivedText(of) }: { readonly of: Derived; readonly text?: string }) {
  return <ComputedValue derived={of} text={text} label={`${capitalised(meaningOf(of))}, ${text}`} />;
}

interface RowProps {
  readonly id: string;
  readonly name: string;
  readonly value: ReactNode;
  readonly remark: ReactNode;
}

function Row({ id, name, value, remark }: RowProps) {
  const slot = `existing-${id}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={styles['row']}>
        <th scope="row">{name}</th>
        <td className={styles['value']}>{value}</td>
        <td className={styles['remark']}>{remark}</td>
      </tr>
      <DerivationSlot name={slot} columns={3} />
    </DerivationRow>
  );
}

function Numbers({ finding, name }: VerdictProps) {
  const { smallest, pilot, largest, knurl } = finding.limits;
  const { bore, bite, biteFactor, chance, meltVolume, meltHeight, meltVolumeWanted, given, holds } = finding;
  return (
    <table className={styles['numbers']}>
      <caption>{name} in this hole</caption>
      <tbody>
        <Row
          id="bore"
          name="Bore"
          value={<Value of={bore} />}
          remark={
            <>
              a chance of <Value of={chance} text={chanceText(chance.value)} /> that it fits, as well as it is
              known
            </>
          }
        />
        <Row
          id="limits"
          name="Bores that fit"
          value={
            <>
              <Value of={pilot} /> to <Value of={largest} />
            </>
          }
          remark={
            <>
              from <Value of={smallest} /> on the pilot melts its way in; up to <Value of={knurl} /> the knurl
              still touches
            </>
          }
        />
        <Row
          id="bite"
          name="Bite of the knurl"
          value={<Value of={bite} />}
          remark={
            <>
              a side; it keeps <Value of={biteFactor} text={percentText(biteFactor.value)} /> of its full hold
            </>
          }
        />
        <Row
          id="melt"
          name="Melt"
          value={<Value of={meltVolume} />}
          remark={
            <>
              in place of <Value of={meltVolumeWanted} />; it fills <Value of={meltHeight} /> of the bore
              {given ? (
                <>
                  , where <Value of={given.well} /> is left under the insert
                </>
              ) : null}
            </>
          }
        />
        <Row
          id="depth"
          name="Depth needed"
          value={<Value of={finding.depthNeeded} />}
          remark={<Told sentence={sentenceOfDepth(finding)} />}
        />
        <Row
          id="holds"
          name="Holds"
          value={
            <b>
              <Value of={holds} text={forceText(holds.value)} />
            </b>
          }
          remark="with that bite: 19 of 20 such joints do"
        />
      </tbody>
    </table>
  );
}
