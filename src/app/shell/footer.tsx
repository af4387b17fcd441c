import { diameterNumber, lengthNumber, torqueText } from '../../wording/amount.ts';
import { CAUTIONS } from '../../wording/cautions.ts';
import { sizeOfInsert } from '../../wording/names.ts';
import { STANDINGS } from '../../wording/standing.ts';
import { useFindings, useSheetValue } from '../state/sheet-context.ts';
import styles from './footer.module.css';

/** What to mind at the bench, how to read the signs, and the title block. */
export function Footer() {
  return (
    <footer className={styles.footer}>
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
    </footer>
  );
}

function TitleBlock() {
  const name = useSheetValue(({ journal }) => journal.present.name);
  const { joint, shown } = useFindings();
  const { screw } = joint;
  const dial = shown?.assessment.torque;
  const length = shown?.assessment.screw;
  const entries = [
    [
      'insert',
      shown ? `${shown.insert.thread.designation} ${sizeOfInsert(shown.assessment.dimensions)}` : 'none',
    ],
    [
      'hole to draw',
      shown
        ? `⌀ ${diameterNumber(shown.assessment.hole.drawn.value)} × ${lengthNumber(shown.assessment.hole.depth.value)}`
        : 'none',
    ],
    ['dial', dial?.kind === 'window' ? torqueText(dial.dial.value) : 'none'],
    ['printed in', joint.host.material.name],
    [
      'screw',
      `${screw.thread.designation}${length?.kind === 'chosen' ? ` × ${lengthNumber(length.length.value).replace(/\.0$/, '')}` : ''}, ${screw.propertyClass.designation}`,
    ],
    ['lengths', 'mm'],
  ] as const;
  return (
    <dl className={styles.block}>
      <div className={styles.whole}>
        <dt>joint</dt>
        <dd>{name}</dd>
      </div>
      {entries.map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
