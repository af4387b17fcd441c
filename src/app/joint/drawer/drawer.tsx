import { useCallback, useState } from 'react';
import { capitalised, countWord } from '../../../wording/amount.ts';
import { QuestionSection } from '../../questions/question-section.tsx';
import {
  useDocumentAtPress,
  useFindingsValue,
  useSheetActions,
  useSheetValue,
} from '../../state/sheet-context.ts';
import styles from './drawer.module.css';
import { duplicated } from './drawer-edits.ts';
import { DrawerRow } from './drawer-row.tsx';

/** Every insert that lies at hand: measured, counted, added and taken out. */
export function Drawer() {
  const { edit } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const epoch = useSheetValue((sheet) => sheet.epoch);
  const drawer = useSheetValue(({ journal }) => journal.present.drawer);
  const shownId = useFindingsValue(({ shown }) => shown?.insert.id);
  const [open, setOpen] = useState<string | null>(null);
  const onOpen = useCallback((id: string, isOpen: boolean) => setOpen(isOpen ? id : null), []);
  const add = () => {
    const shownIndex = drawer.findIndex(({ id }) => id === shownId);
    const { id, edit: added } = duplicated(
      documentAtPress(),
      shownIndex < 0 ? drawer.length - 1 : shownIndex,
    );
    edit('drawer', added);
    setOpen(id);
  };
  return (
    <QuestionSection
      id="drawer"
      question="The drawer"
      aside={`${drawer.length === 1 ? 'One insert' : `${capitalised(countWord(drawer.length))} inserts`} at hand. Measure each with the caliper, more than once if you can: the readings show how far they can be trusted.`}
    >
      <ul className={styles.drawer} key={epoch}>
        {drawer.map((record, index) => (
          <DrawerRow
            key={record.id}
            index={index}
            record={record}
            isAlone={drawer.length === 1}
            isShown={record.id === shownId}
            isOpen={open === record.id}
            onOpen={onOpen}
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
