import { useRef } from 'react';
import { useSheet } from '../state/sheet-context.ts';
import { JointFile } from './joint-file.tsx';
import { OtherJoints } from './other-joints.tsx';
import { QuietText } from './quiet-text.tsx';
import styles from './title.module.css';

const GREATEST_NAME = 80;
const GREATEST_SCENARIO = 400;

/** The joint's name and what it is about, both to be written over; the other joints. */
export function Title() {
  const { sheet, document, edit } = useSheet();
  const name = useRef<HTMLHeadingElement>(null);
  return (
    <div className={styles.title}>
      <h1 ref={name} className={styles.name} tabIndex={-1}>
        <QuietText
          key={`name ${sheet.epoch}`}
          label="Name of the joint"
          value={document.name}
          greatest={GREATEST_NAME}
          onTake={(name) => (name === '' ? undefined : edit('name', { path: 'name', value: name }))}
        />
      </h1>
      <div className={styles.words}>
        <QuietText
          key={`scenario ${sheet.epoch}`}
          label="What the joint is about"
          value={document.scenario}
          greatest={GREATEST_SCENARIO}
          lines
          placeholder="What is this joint about?"
          onTake={(scenario) => edit('scenario', { path: 'scenario', value: scenario })}
        />
        <p className={styles.others}>
          <OtherJoints onOpened={() => name.current?.focus()} />
          <JointFile />
        </p>
      </div>
    </div>
  );
}
