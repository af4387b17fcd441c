import { useDeferredValue, useId, useMemo, useState } from 'react';
import type { HoleReadingRecord, PrinterRecord } from '../../../storage/document.ts';
import { LIMITS } from '../../../storage/limits.ts';
import {
  HOLES_TOO_LARGE,
  PERHAPS_SWAPPED,
  pastedHolesWords,
  tooManyHoles,
} from '../../../wording/my-printer.ts';
import { sentenceOfRefusal } from '../../../wording/refusals.ts';
import { ChoiceField } from '../../fields/choice-field.tsx';
import type { Choice } from '../../fields/field-props.ts';
import { readingsWords } from '../../fields/readings-words.ts';
import { definitionOf } from '../../state/quantity-of-key.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { checkHoles, mostlyLarger } from './hole-check.ts';
import styles from './my-printer.module.css';
import type { HoleManner } from './new-hole.tsx';
import { type ColumnOrder, type PastedHole, pastedLines, withoutLines } from './paste-lines.ts';
import { HOLE, holesPath, withHoles } from './printer-edits.ts';

/** Lines that are not taken are named up to this many; the others are counted. */
const MOST_NAMED = 12;
const MOST_HOLES = LIMITS.holeReadings.greatest;
const DEFINITION = definitionOf(HOLE);

const ORDERS: readonly Choice<ColumnOrder>[] = [
  { value: 'drawn-first', label: 'drawn, then measured' },
  { value: 'measured-first', label: 'measured, then drawn' },
];

interface PasteHolesProps {
  readonly index: number;
  readonly printer: PrinterRecord;
  readonly manner: HoleManner;
  readonly onDone: () => void;
}

/** Many holes at once, one a line: what is sound goes in, all else stays in the field with its reason. */
export default function PasteHoles({ index, printer, manner, onDone }: PasteHolesProps) {
  const id = useId();
  const { document, edit } = useSheet();
  const [text, setText] = useState('');
  const [order, setOrder] = useState<ColumnOrder>('drawn-first');
  const looked = useDeferredValue(text);
  const found = useMemo(() => {
    const lines = pastedLines(looked, order);
    if (lines.kind === 'too-large') return lines;
    const holes = lines.holes.map((hole) => ({ hole, record: recordOf(hole, manner) }));
    const check = checkHoles(
      document,
      printer,
      holes.map(({ record }) => record),
    );
    const faults = [
      ...lines.bad.map(({ line, text: typed, refusal }) => ({
        line,
        why: readingsWords(refusal, { definition: DEFINITION, text: typed, value: null, noun: 'A hole' })
          .message,
      })),
      ...[...check.ofNew].map(([place, refusal]) => ({
        line: holes[place]?.hole.line ?? 0,
        why: sentenceOfRefusal(refusal),
      })),
    ].toSorted((one, other) => one.line - other.line);
    const sound = holes.filter((_, place) => !check.ofNew.has(place));
    return { kind: 'read', sound, faults, ofOld: check.ofOld } as const;
  }, [looked, order, manner, document, printer]);
  const room = MOST_HOLES - printer.holes.length;
  const take = (sound: readonly Sound[]) => {
    const added = sound.slice(0, room);
    edit(
      `${holesPath(index)}@paste`,
      withHoles(
        document,
        index,
        added.map(({ record }) => record),
      ),
    );
    const rest = withoutLines(
      text,
      added.map(({ hole }) => hole),
    );
    setText(rest);
    if (!/\d/.test(rest)) onDone();
  };
  return (
    <div className={styles['paste']}>
      <label htmlFor={id}>One hole a line: the drawn diameter, then one or more readings of it</label>
      <textarea
        id={id}
        rows={6}
        value={text}
        spellCheck={false}
        onChange={(event) => setText(event.target.value)}
        placeholder={'4,00; 3,84\n4.50\t4.36\t4.35'}
      />
      <div className={styles['order']}>
        <ChoiceField label="Each line has" value={order} choices={ORDERS} onTake={setOrder} />
      </div>
      {found.kind === 'too-large' ? (
        <p role="alert">
          <b>Not read.</b> {HOLES_TOO_LARGE(found.lines)}
        </p>
      ) : (
        <>
          <Report sound={found.sound} faults={found.faults} room={room} />
          {found.ofOld.map(({ place, refusal }) => (
            <p key={place} role="alert">
              <b>Not taken.</b> Beside these holes, hole {place + 1} of the table looks wrong.{' '}
              {sentenceOfRefusal(refusal)}
            </p>
          ))}
          <p className={styles['add']}>
            {found.sound.length > 0 && room > 0 && found.ofOld.length === 0 ? (
              <button type="button" className="press" onClick={() => take(found.sound)}>
                {takeWords(found.sound.length, room)}
              </button>
            ) : null}{' '}
            <button type="button" className="press" onClick={onDone}>
              Leave it
            </button>
          </p>
        </>
      )}
    </div>
  );
}

interface Sound {
  readonly hole: PastedHole;
  readonly record: HoleReadingRecord;
}

const recordOf = ({ drawn, measured }: PastedHole, manner: HoleManner): HoleReadingRecord => ({
  drawn_mm: drawn,
  measured_mm: [...measured],
  ...manner,
});

const takeWords = (count: number, room: number): string =>
  count > room ? `Take the first ${room}` : count === 1 ? 'Take the hole' : `Take ${count} holes`;

interface ReportProps {
  readonly sound: readonly Sound[];
  readonly faults: readonly { readonly line: number; readonly why: string }[];
  readonly room: number;
}

function Report({ sound, faults, room }: ReportProps) {
  if (sound.length + faults.length === 0) return null;
  return (
    <div role="status">
      <p>{pastedHolesWords(sound.length, faults.length)}</p>
      {sound.length > room ? (
        <p>
          <b>Too many.</b> {tooManyHoles(sound.length, { room, most: MOST_HOLES })}
        </p>
      ) : null}
      {mostlyLarger(sound.map(({ record }) => record)) ? <p>{PERHAPS_SWAPPED}</p> : null}
      {faults.length === 0 ? null : (
        <ul>
          {faults.slice(0, MOST_NAMED).map(({ line, why }) => (
            <li key={line}>
              Line {line}: {why}
            </li>
          ))}
          {faults.length > MOST_NAMED ? <li>and {faults.length - MOST_NAMED} more</li> : null}
        </ul>
      )}
    </div>
  );
}
