import { lazy, Suspense, useState } from 'react';
import type { HoleAxis } from '../../../core/holes/hole-reading.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { QuantityField } from '../../fields/quantity-field.tsx';
import { definitionOf } from '../../state/quantity-of-key.ts';
import { HOLE_AXES, INSTRUMENTS } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { type HoleManner, NewHole } from './new-hole.tsx';
import { CORNERS } from './printer-edits.ts';

const PasteHoles = lazy(() => import('./paste-holes.tsx'));

interface NewHolesProps {
  readonly index: number;
  readonly printer: PrinterRecord;
  /** Of the joint's hole. */
  readonly axis: HoleAxis;
}

/** Where holes are entered, one after the other or many at once, with how all of them were read. */
export function NewHoles({ index, printer, axis }: NewHolesProps) {
  const last = printer.holes.at(-1);
  const [manner, setManner] = useState<HoleManner>({
    instrument: last?.instrument ?? 'caliper-jaws',
    axis: last?.axis ?? axis,
  });
  const [isPasting, setPasting] = useState(false);
  const { facets, ...round } = manner;
  return (
    <section className={styles['part']} aria-label="More holes">
      <h3>More holes</h3>
      <div className={styles['fields']}>
        <NewHole index={index} printer={printer} manner={manner} />
        <div>
          <ChoiceField
            label="Read with"
            value={manner.instrument}
            choices={INSTRUMENTS}
            onTake={(instrument) => setManner({ ...manner, instrument })}
          />
          <ChoiceField
            label="Axis of the hole"
            value={manner.axis}
            choices={HOLE_AXES}
            onTake={(chosen) => setManner({ ...manner, axis: chosen })}
          />
          <QuantityField
            label="Corners of its polygon"
            definition={definitionOf(CORNERS)}
            value={facets ?? null}
            note={CORNERS.note}
            unitShown=""
            onTake={(corners) => setManner({ ...manner, facets: Math.round(corners) })}
            onClear={() => setManner(round)}
          />
        </div>
      </div>
      <p className={styles['add']}>
        <button
          type="button"
          className="press"
          aria-expanded={isPasting}
          onClick={() => setPasting(!isPasting)}
        >
          Paste many holes
        </button>
      </p>
      {isPasting ? (
        <Suspense fallback={null}>
          <PasteHoles index={index} printer={printer} manner={manner} onDone={() => setPasting(false)} />
        </Suspense>
      ) : null}
    </section>
  );
}
