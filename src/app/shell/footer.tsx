import type { JointAssessment } from '../../core/joint/assessment.ts';
import type { Derived } from '../../core/sources/derived.ts';
import { diameterNumber, lengthNumber } from '../../wording/amount.ts';
import { CAUTIONS } from '../../wording/cautions.ts';
import { sizeOfInsert } from '../../wording/names.ts';
import { figure, type Sentence, said, told } from '../../wording/sentence.ts';
import { STANDINGS } from '../../wording/standing.ts';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import { Told } from '../derivation/told.tsx';
import { useFindings, useSheetValue } from '../state/sheet-context.ts';
import styles from './footer.module.css';

const SLOT = 'title block';

/** What to mind at the bench, how to read the signs, and the title block. */
export function Footer() {
  return (
    <footer className={styles.footer}>
      <div className={styles.columns}>
        <div>
          <h2>At the bench</h2>
          <ul>
            {CAUTIONS.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </div>
        <div>
          <h2>How far to trust a number</h2>
          <ul>
            {Object.values(STANDINGS).map(({ sign, words, meaning }) => (
              <li key={words}>
                <span className={styles.sign}>{sign}</span> <span className="line">{words}</span> {meaning}
              </li>
            ))}
          </ul>
        </div>
        <TitleBlock />
      </div>
      <DerivationSlot name={SLOT} />
    </footer>
  );
}

const NONE: Sentence = ['none'];

const holeOf = ({ hole }: JointAssessment): Sentence =>
  said`⌀ ${figure(hole.drawn, diameterNumber(hole.drawn.value))} × ${figure(hole.depth, lengthNumber(hole.depth.value))}`;

const lengthOf = (length: Derived) => figure(length, lengthNumber(length.value).replace(/\.0$/, ''));

function TitleBlock() {
  const name = useSheetValue(({ journal }) => journal.present.name);
  const { joint, shown } = useFindings();
  const { screw } = joint;
  const dial = shown?.assessment.torque;
  const length = shown?.assessment.screw;
  const entries = [
    [
      'insert',
      shown ? said`${shown.insert.thread.designation} ${sizeOfInsert(shown.assessment.dimensions)}` : NONE,
    ],
    ['hole to draw', shown ? holeOf(shown.assessment) : NONE],
    ['dial', dial?.kind === 'window' ? said`${told(dial.dial)}` : NONE],
    ['printed in', said`${joint.host.material.name}`],
    [
      'screw',
      said`${screw.thread.designation}${length?.kind === 'chosen' ? said` × ${lengthOf(length.length)}` : ''}, ${screw.propertyClass.designation}`,
    ],
    ['lengths', said`mm`],
  ] as const;
  return (
    <DerivationRow slot={SLOT}>
      <dl className={styles.block}>
        <div className={styles.whole}>
          <dt>joint</dt>
          <dd>{name}</dd>
        </div>
        {entries.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>
              <Told sentence={value} of={term} />
            </dd>
          </div>
        ))}
      </dl>
    </DerivationRow>
  );
}
