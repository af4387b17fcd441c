import { useState } from 'react';
import { capitalised, countWord } from '../../../wording/amount.ts';
import { QuestionSection } from '../../questions/question-section.tsx';
import { useFindings, useSheet } from '../../state/sheet-context.ts';
import styles from './drawer.module.css';
import { duplicated } from './drawer-edits.ts';
import { DrawerRow } from './drawer-row.tsx';

/** Every insert that lies at hand: measured, counted, added and taken out. */
export function Drawer() {
  const { sheet, document, edit } = useSheet();
  const { shown } = useFindings();
  const [open, setOpen] = useState<string | null>(null);
  const { drawer } = document;
  const add = () => {
    const shownIndex = drawer.findIndex(({ id }) => id === shown?.insert.id);
    const { id, edit: added } = duplicated(document, shownIndex < 0 ? drawer.length - 1 : shownIndex);
    edit('drawer', added);
    setOpen(id);
  };
  return (
    <QuestionSection
      id="drawer"
      question="The drawer"
      aside={`${drawer.length === 1 ? 'One insert' : `${capitalised(countWord(drawer.length))} inserts`} at hand. Measure each with the caliper, more than once if you can: the readings show how far they can be trusted.`}
    >
      <ul className={styles.drawer} key={sheet.epoch}>
        {drawer.map((record, index) => (
          <DrawerRow
            key={record.id}
            index={index}
            record={record}
            isOpen={open === record.id}
            onOpen={(isOpen) => setOpen(isOpen ? record.id : null)}
            onDuplicated={setOpen}
          />
        ))}
      </ul>
      <p className={styles.add}>
        <button type="button" className="press" onClick={add}>
          Add an insert
        </button>{' '}
        <span className="line">begins as a copy of the one shown; put your readings over it</span>
      </p>
    </QuestionSection>
  );
}
