import type { Insert } from '../../core/inserts/insert.ts';
import type { JointAssessment } from '../../core/joint/assessment.ts';
import { diameterNumber, lengthNumber, torqueText } from '../../wording/amount.ts';
import { nameOfInsert } from '../../wording/names.ts';
import styles from './title-block.module.css';

interface TitleBlockProps {
  readonly name: string;
  readonly scenario: string;
  readonly documentVersion: number;
  readonly insert: Insert;
  readonly assessment: JointAssessment;
}

/** What the sheet is about, what it comes to, and room for date and names by hand. */
export function TitleBlock({ name, scenario, documentVersion, insert, assessment }: TitleBlockProps) {
  const { torque, hole } = assessment;
  const rows = [
    ['insert', nameOfInsert(insert.thread.designation, assessment.dimensions)],
    [
      hole.existing ? 'hole that is there' : 'hole to draw',
      `⌀ ${diameterNumber(hole.drawn.value)} × ${lengthNumber(hole.depth.value)}`,
    ],
    ['dial', torque.kind === 'window' ? torqueText(torque.dial.value) : 'no torque fits'],
    ['joint document', `version ${documentVersion}`],
    ['date', ''],
    ['worked out by', ''],
    ['checked by', ''],
  ] as const;
  return (
    <header className={styles['head']}>
      <div>
        <p className={styles['kind']}>Knurlwright, calculation sheet</p>
        <h2 id="calculation-title">{name}</h2>
        <p>{scenario}</p>
      </div>
      <dl>
        {rows.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
}
