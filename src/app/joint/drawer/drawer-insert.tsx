import { READINGS, type ReadingKey } from '../../state/quantities.ts';
import { THREADS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { DocumentText } from '../document-text.tsx';
import { ReadingsRow } from '../readings-row.tsx';
import styles from './drawer.module.css';

const PLACE = 'drawer';

/** The fields of one insert. */
export function DrawerInsert({ index }: { readonly index: number }) {
  return (
    <div className={styles.fields}>
      {(Object.keys(READINGS) as ReadingKey[]).map((reading) => (
        <ReadingsRow key={reading} insert={index} reading={reading} place={PLACE} />
      ))}
      <DocumentChoice path={`drawer.${index}.thread`} place={PLACE} label="Thread" choices={THREADS} />
      <DocumentQuantity
        quantity={{ path: `drawer.${index}.count`, label: 'Pieces', limit: 'count', unit: '-', step: 1 }}
        place={PLACE}
        optional
        width={5}
      />
      <DocumentText path={`drawer.${index}.label`} label="Label" greatest={80} />
    </div>
  );
}
