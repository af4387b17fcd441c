import { DocumentChoice } from '../../joint/document-choice.tsx';
import styles from './what-tests-say.module.css';

const CHOICES = [
  { value: 'used', label: 'use the tests' },
  { value: 'left-out', label: 'leave them out' },
] as const;

/** Whether the tests speak in the answers; the tests themselves stay as they are. */
export const EvidenceSwitch = () => (
  <div className={styles['switch']}>
    <DocumentChoice
      path="evidence"
      place="what-tests-say"
      label="The answers"
      choices={CHOICES}
      note="Leaving them out shows the estimates; no test is taken out."
    />
  </div>
);
