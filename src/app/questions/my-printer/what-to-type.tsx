import { compensationRule, slicerExpansion } from '../../../core/holes/slicer-compensation.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { decimalText, derivedText, NO_BREAK_SPACE } from '../../../wording/amount.ts';
import { sentenceOfRule } from '../../../wording/my-printer.ts';
import { standingOf } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { COMPENSATIONS } from '../../joint/choices.ts';
import { DocumentChoice } from '../../joint/document-choice.tsx';
import { DocumentQuantity } from '../../joint/document-quantity.tsx';
import { useSheetValue } from '../../state/sheet-context.ts';
import { PLACE } from './hole-choices.ts';
import styles from './my-printer.module.css';
import { CORNERS } from './printer-edits.ts';

const SLOT = 'what-to-type';

interface WhatToTypeProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
  readonly printer: PrinterRecord | undefined;
}

/** Where the holes of this joint are compensated, and the one number to draw or to type: never both. */
export function WhatToType({ joint, assessment, printer }: WhatToTypeProps) {
  const compensation = useSheetValue(({ journal }) => journal.present.joint.holes.compensation);
  const rule =
    joint.holes.printer?.rule ?? compensationRule(compensation, printer?.gaugeCompensation ?? 'none');
  const { drawn, boreAsPrinted } = assessment.hole;
  const { sign, words } = standingOf(drawn);
  const expansion =
    rule.code === 'slicer-takes-error' ? slicerExpansion(joint.holes.behaviour, boreAsPrinted) : undefined;
  return (
    <section className={styles['part']} aria-label="To draw and to type">
      <h3>To draw and to type</h3>
      <div className={styles['fields']}>
        <DocumentChoice
          path="joint.holes.compensation"
          place={PLACE}
          label="Holes are compensated"
          choices={COMPENSATIONS}
        />
        <DocumentQuantity
          quantity={{ ...CORNERS, path: 'joint.holes.facets', label: 'Corners of the exported circle' }}
          place={PLACE}
          optional
        />
      </div>
      <DerivationRow slot={SLOT}>
        <p className={styles['words']}>
          Draw <Value derived={drawn} text={`⌀ ${derivedText(drawn)}`} name="Hole to draw" />
          {expansion ? (
            <>
              , and type{' '}
              <Value
                derived={expansion.onDiameter}
                text={`${decimalText(expansion.onDiameter.value, 2)}${NO_BREAK_SPACE}mm`}
                name="Expansion on the diameter"
              />{' '}
              into the slicer where it asks for an expansion of the hole’s diameter, or{' '}
              <Value
                derived={expansion.perSide}
                text={`${decimalText(expansion.perSide.value, 3)}${NO_BREAK_SPACE}mm`}
                name="Expansion a side"
              />{' '}
              where it moves the contour
            </>
          ) : null}
          .{' '}
          <span className="line">
            {sign} {words}
          </span>
        </p>
        <DerivationSlot name={SLOT} />
      </DerivationRow>
      <p className={styles['words']}>{sentenceOfRule(rule.code)}</p>
    </section>
  );
}

interface ValueProps {
  readonly derived: Derived;
  readonly text: string;
  readonly name: string;
}

const Value = ({ derived, text, name }: ValueProps) => (
  <b>
    <ComputedValue derived={derived} text={text} label={`${name}, ${text}`} />
  </b>
);
