import type { TestRecord } from '../../../storage/document.ts';
import { UNIT_OF_TEST } from '../../../storage/resolve-tests.ts';
import { testUnitText } from '../../../wording/bench-tests.ts';
import type { Choice } from '../../fields/field-props.ts';
import { AXES } from '../../joint/choices.ts';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { DocumentText } from '../../joint/document-text.tsx';
import { useSheetValue } from '../../state/sheet-context.ts';
import { DateField } from './date-field.tsx';
import { PhotoField } from './photo-field.tsx';
import {
  insertsOf,
  isTorque,
  KINDS,
  materialsOf,
  NO_PRINTER,
  printersOf,
  resultsOf,
  TEST_SETTINGS_CHOICES,
  unitsOf,
} from './test-choices.ts';
import { alongKind } from './test-edits.ts';
import styles from './test-log.module.css';

const PLACE = 'tests';

interface TestFieldsProps {
  readonly index: number;
  readonly test: TestRecord;
  /** The inserts of the drawer by name. */
  readonly inserts: readonly Choice<string>[];
}

/** The fields of one test: first what is written at the bench, then how it was set up. */
export function TestFields({ index, test, inserts }: TestFieldsProps) {
  const printers = useSheetValue(({ journal }) => journal.present.printers);
  const at = (key: string) => `tests.${index}.${key}`;
  const unit = UNIT_OF_TEST[test.unit];
  const unitShown = testUnitText(test.unit);
  const reading = { limit: 'testValue', unit, step: isTorque(test) ? 0.01 : 0.1 } as const;
  return (
    <>
      <div className={styles.bench}>
        <DocumentChoice
          path={at('insert')}
          place={PLACE}
          label="Insert"
          choices={insertsOf(inserts, test)}
          read={(value) => (typeof value === 'string' ? value : undefined)}
        />
        <DocumentChoice
          path={at('kind')}
          place={PLACE}
          label="Test"
          choices={KINDS}
          along={(kind) => alongKind(test, index, kind)}
        />
        <div className={styles.readingField}>
          <DocumentQuantity
            quantity={{ ...reading, path: at('value'), label: 'Reading', noun: 'A reading' }}
            place={PLACE}
            unitShown={unitShown}
            width={8}
          />
        </div>
        <DocumentChoice
          path={at('result')}
          place={PLACE}
          label="How it ended"
          choices={resultsOf(test.kind)}
        />
        <DocumentQuantity
          quantity={{
            path: at('coupon'),
            label: 'Number on the coupon',
            limit: 'couponNumber',
            unit: '-',
            step: 1,
          }}
          place={PLACE}
          optional
        />
        <DocumentText path={at('note')} label="Note" greatest={400} emptied="kept" />
        <PhotoField path={at('photo')} photo={test.photo} testId={test.id} />
      </div>
      <details className={styles.setUp}>
        <summary>Set-up and instrument</summary>
        <div className={styles.fields}>
          <DateField path={at('date')} place={PLACE} label="Date" />
          <DocumentChoice path={at('unit')} place={PLACE} label="Unit" choices={unitsOf(test.kind)} />
          <DocumentQuantity
            quantity={{
              path: at('leverRatio'),
              label: 'Lever ratio',
              limit: 'leverRatio',
              unit: '-',
              step: 0.1,
              note: 'Force at the insert over force at the scale; 1 without a lever.',
            }}
            place={PLACE}
          />
          <DocumentQuantity
            quantity={{ ...reading, path: at('resolution'), label: 'Resolution of the instrument' }}
            place={PLACE}
            unitShown={unitShown}
            optional
          />
          <DocumentQuantity
            quantity={{ ...reading, path: at('greatest'), label: 'Its greatest reading' }}
            place={PLACE}
            unitShown={unitShown}
            optional
          />
          <DocumentChoice
            path={at('printer')}
            place={PLACE}
            label="Printer"
            choices={printersOf({ printers }, test)}
            read={(value) => (typeof value === 'string' ? value : NO_PRINTER)}
            write={(choice) => (choice === NO_PRINTER ? undefined : choice)}
          />
          <DocumentChoice
            path={at('material')}
            place={PLACE}
            label="Printed in"
            choices={materialsOf(test)}
          />
          <DocumentChoice path={at('axis')} place={PLACE} label="Insert axis" choices={AXES} />
          <DocumentChoice
            path={at('setting')}
            place={PLACE}
            label="How it was set"
            choices={TEST_SETTINGS_CHOICES}
          />
          <DocumentQuantity
            quantity={{ path: at('wallLines'), label: 'Wall lines', limit: 'wallLines', unit: '-', step: 1 }}
            place={PLACE}
            optional
          />
          <DocumentQuantity
            quantity={{
              path: at('infill_percent'),
              label: 'Infill',
              limit: 'infill_percent',
              unit: '%',
              step: 5,
            }}
            place={PLACE}
            optional
          />
          <DocumentQuantity
            quantity={{
              path: at('bore_mm'),
              label: 'Bore before setting ⌀',
              limit: 'holeDiameter_mm',
              unit: 'mm',
              step: 0.01,
              isDiameter: true,
              note: 'Empty: as intended.',
            }}
            place={PLACE}
            optional
          />
          <DocumentQuantity
            quantity={{
              path: at('ironTemperature_degC'),
              label: 'Iron',
              limit: 'ironTemperature_degC',
              unit: '°C',
              step: 5,
            }}
            place={PLACE}
            optional
          />
          <DocumentQuantity
            quantity={{
              path: at('settingTime_s'),
              label: 'From touch to flush',
              limit: 'settingTime_s',
              unit: 's',
              step: 1,
            }}
            place={PLACE}
            optional
          />
          <DocumentText path={at('batch')} label="What was varied" greatest={40} />
        </div>
      </details>
    </>
  );
}
