import { STANDINGS } from '../../wording/standing.ts';
import { DerivationSlot } from '../derivation/derivation-slot.tsx';
import { InsertPortrait } from '../drawing/insert-portrait.tsx';
import type { Shown } from '../state/findings.ts';
import { QUANTITIES, READINGS, type ReadingKey } from '../state/quantities.ts';
import { DocumentQuantity } from './document-quantity.tsx';
import styles from './insert-measured.module.css';
import { MeasuredControl } from './measured-control.tsx';
import { ReadingsRow } from './readings-row.tsx';

const SLOT = 'portrait';
const PLACE = 'portrait';

interface InsertMeasuredProps {
  readonly shown: Shown;
  /** Index of the insert in the drawer. */
  readonly index: number;
}

/** The insert that is shown, drawn alone, and every reading it was measured with. */
export function InsertMeasured({ shown, index }: InsertMeasuredProps) {
  const { insert, assessment } = shown;
  const { knurlDiameter, pilotDiameter, length, knurledLength } = assessment.dimensions;
  const control = (reading: ReadingKey) => (
    <MeasuredControl insert={index} reading={reading} place={PLACE} slot={SLOT} />
  );
  return (
    <aside className={styles.measured} aria-label="The insert, as measured">
      <h3>The insert, as measured</h3>
      <InsertPortrait
        insert={{
          nominalDiameter: insert.thread.nominalDiameter,
          minorDiameter: insert.thread.limits.internalMinorMax,
          knurlDiameter: knurlDiameter.estimate.value,
          pilotDiameter: pilotDiameter.estimate.value,
          length: length.estimate.value,
          knurledLength: knurledLength.estimate.value,
        }}
        controls={{
          'knurl-diameter': control('knurlDiameter_mm'),
          'pilot-diameter': control('pilotDiameter_mm'),
          length: control('length_mm'),
          'knurled-length': control('knurledLength_mm'),
        }}
        {...(insert.knurledLength ? {} : { knurledLengthRemark: `${STANDINGS.estimate.sign} estimate` })}
      />
      <DerivationSlot name={SLOT} />
      <div className={styles.readings}>
        <p className="line">
          {STANDINGS.measured.sign} {STANDINGS.measured.words}, every reading, mm
        </p>
        {(Object.keys(READINGS) as ReadingKey[]).map((reading) => (
          <ReadingsRow key={reading} insert={index} reading={reading} place="readings" picks />
        ))}
        <DocumentQuantity quantity={QUANTITIES.caliper} place="readings" />
      </div>
    </aside>
  );
}
