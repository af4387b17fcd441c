import type { SourceId } from '../../core/sources/sources.ts';
import type { StepGroup } from './calculation-steps.ts';
import { CheckTable } from './check-table.tsx';
import styles from './part-section.module.css';
import { titleOfPart } from './part-titles.ts';
import { StepRow } from './step-row.tsx';

interface PartSectionProps {
  readonly group: StepGroup;
  readonly numberOfSource: (source: SourceId) => number;
}

/** One part of the calculation: its steps, what of it stands above already, and what it is held against. */
export function PartSection({ group, numberOfSource }: PartSectionProps) {
  const { id, steps, earlier, checks } = group;
  const title = titleOfPart(id);
  return (
    <section className={styles['part']}>
      <h3>{title}</h3>
      {earlier.length > 0 && (
        <p className={styles['earlier']}>
          Above already: {earlier.map((number) => `(${number})`).join(', ')}
        </p>
      )}
      {steps.length > 0 && (
        <ol>
          {steps.map((step) => (
            <StepRow key={step.number} step={step} numberOfSource={numberOfSource} />
          ))}
        </ol>
      )}
      {checks.length > 0 && <CheckTable checks={checks} caption={title} />}
    </section>
  );
}
