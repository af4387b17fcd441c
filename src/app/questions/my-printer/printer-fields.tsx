import { useId, useState } from 'react';
import { HOST_MATERIALS } from '../../joint/choices.ts';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import text from '../../joint/document-text.module.css';
import { QUANTITIES } from '../../state/quantities.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { GAUGES, PLACE } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { printerQuantities } from './printer-edits.ts';

const LONGEST_NAME = 80;

/** What a printer profile is: machine, material, nozzle, layers, and what its holes were read with. */
export function PrinterFields({ index }: { readonly index: number }) {
  return (
    <div className={styles['fields']}>
      <PrinterName index={index} />
      <DocumentChoice
        path={`printers.${index}.material`}
        place={PLACE}
        label="Material of the gauge"
        choices={HOST_MATERIALS}
      />
      <DocumentChoice
        path={`printers.${index}.gaugeCompensation`}
        place={PLACE}
        label="Gauge was printed"
        choices={GAUGES}
        note="Whether the slicer enlarged the holes that were read."
      />
      {printerQuantities(index).map((quantity) => (
        <DocumentQuantity key={quantity.path} quantity={quantity} place={PLACE} />
      ))}
      <DocumentQuantity quantity={QUANTITIES.caliper} place={PLACE} />
    </div>
  );
}

/** A printer is always called something: an emptied field goes back to what it was. */
function PrinterName({ index }: { readonly index: number }) {
  const id = useId();
  const { document, edit } = useSheet();
  const name = document.printers[index]?.name ?? '';
  const [typed, setTyped] = useState<string | null>(null);
  const leave = () => {
    const wanted = typed?.trim() ?? '';
    const path = `printers.${index}.name`;
    if (wanted !== '' && wanted !== name) edit(path, { path, value: wanted });
    setTyped(null);
  };
  return (
    <div className={text['row']}>
      <label htmlFor={id}>Name of the printer</label>
      <input
        id={id}
        type="text"
        maxLength={LONGEST_NAME}
        value={typed ?? name}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') leave();
          if (event.key === 'Escape') setTyped(null);
        }}
      />
    </div>
  );
}
