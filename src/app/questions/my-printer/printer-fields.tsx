import { HOST_MATERIALS } from '../../joint/choices.ts';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { DocumentText } from '../../joint/document-text.tsx';
import { QUANTITIES } from '../../state/quantities.ts';
import { GAUGES, PLACE } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { printerQuantities } from './printer-edits.ts';

const LONGEST_NAME = 80;

/** What a printer profile is: machine, material, nozzle, layers, and what its holes were read with. */
export function PrinterFields({ index }: { readonly index: number }) {
  return (
    <div className={styles['fields']}>
      {/* A printer is always called something. */}
      <DocumentText
        path={`printers.${index}.name`}
        label="Name of the printer"
        greatest={LONGEST_NAME}
        emptied="taken-back"
      />
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
