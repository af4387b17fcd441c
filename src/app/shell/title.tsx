import { useRef } from 'react';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { JointFile } from './joint-file.tsx';
import { OtherJoints } from './other-joints.tsx';
import { QuietText } from './quiet-text.tsx';
import styles from './title.module.css';

const GREATEST_NAME = 80;
const GREATEST_SCENARIO = 400;

/** The joint's name and what it is about, both to be written over; the other joints. */
export function Title() {
  const { edit } = useSheetActions();
  const joint = useSheetValue(({ journal }) => journal.present.name);
  const scenario = useSheetValue(({ journal }) => journal.present.scenario);
  const epoch = useSheetValue((sheet) => sheet.epoch);
  const name = useRef<HTMLHeadingElement>(null);
  return (
    <div className={styles.title}>
      <h1 ref={name} className={styles.name} tabIndex={-1}>
        <QuietText
          key={`name ${epoch}`}
          label="Name of the joint"
          value={joint}
          greatest={GREATEST_NAME}
          onTake={(text) => (text === '' ? undefined : edit('name', { path: 'name', value: text }))}
        />
      </h1>
      <div className={styles.words}>
        <QuietText
          key={`scenario ${epoch}`}
          label="What the joint is about"
          value={scenario}
          greatest={GREATEST_SCENARIO}
          lines
          placeholder="What is this joint about?"
          onTake={(text) => edit('scenario', { path: 'scenario', value: text })}
        />
        <p className={styles.others}>
          <OtherJoints onOpened={() => name.current?.focus()} />
          <JointFile />
        </p>
      </div>
    </div>
  );
}
