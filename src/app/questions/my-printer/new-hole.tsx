import { type SubmitEvent, useId, useRef, useState } from 'react';
import type { HoleReadingRecord, PrinterRecord } from '../../../storage/document.ts';
import { LIMITS } from '../../../storage/limits.ts';
import type { Refusal } from '../../../storage/refusal.ts';
import { sentenceOfRefusal } from '../../../wording/refusals.ts';
import { controlAria, FieldFrame, type FieldMessage } from '../../fields/field-frame.tsx';
import type { Repair } from '../../fields/field-props.ts';
import css from '../../fields/fields.module.css';
import { readingsWords } from '../../fields/readings-words.ts';
import { parseReadings } from '../../quantity/parse-readings.ts';
import { definitionOf } from '../../state/quantity-of-key.ts';
import { useSheet } from '../../state/sheet-context.ts';
import { checkHoles } from './hole-check.ts';
import styles from './my-printer.module.css';
import { HOLE, holesPath, withHoles } from './printer-edits.ts';

/** How new holes were read: what the lines typed or pasted do not say. */
export type HoleManner = Pick<HoleReadingRecord, 'instrument' | 'axis' | 'facets'>;

type Part = 'drawn' | 'measured';
type Texts = Readonly<Record<Part, string>>;

/** Why a hole is not taken, at the field that it is said of. */
interface Objection {
  readonly part: Part;
  readonly message: string;
  readonly refusal?: Refusal;
}
const DEFINITION = definitionOf(HOLE);
const MOST = { drawn: 1, measured: LIMITS.readings.greatest } as const;
const NOTHING = { drawn: '', measured: '' } as const;

interface NewHoleProps {
  readonly index: number;
  readonly printer: PrinterRecord;
  readonly manner: HoleManner;
}

/** One hole after the other: what was drawn, what was read, Enter. */
export function NewHole({ index, printer, manner }: NewHoleProps) {
  const { document, edit } = useSheet();
  const [texts, setTexts] = useState<Texts>(NOTHING);
  const [objection, setObjection] = useState<Objection | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const add = (event?: SubmitEvent<HTMLFormElement>) => {
    event?.preventDefault();
    const drawn = readPart('drawn', texts.drawn);
    const measured = readPart('measured', texts.measured);
    if (typeof drawn === 'string') return setObjection({ part: 'drawn', message: drawn });
    if (typeof measured === 'string') return setObjection({ part: 'measured', message: measured });
    const hole = { drawn_mm: drawn[0] ?? 0, measured_mm: [...measured], ...manner };
    const { ofNew, ofOld } = checkHoles(document, printer, [hole]);
    const wrong = ofNew.get(0);
    const [old] = ofOld;
    if (wrong) {
      const part = wrong.path.endsWith('drawn_mm') ? 'drawn' : 'measured';
      return setObjection({ part, message: sentenceOfRefusal(wrong), refusal: wrong });
    }
    if (old) {
      const message = `Beside it hole ${old.place + 1} looks wrong. ${sentenceOfRefusal(old.refusal)}`;
      return setObjection({ part: 'measured', message });
    }
    edit(`${holesPath(index)}@new`, withHoles(document, index, [hole]));
    setTexts(NOTHING);
    setObjection(null);
    form.current?.querySelector('input')?.focus();
  };
  const type = (part: Part, text: string) => {
    setTexts({ ...texts, [part]: text });
    setObjection(null);
  };
  const repairsOf = ({ part, refusal }: Objection): readonly Repair[] => {
    const right = refusal && rightedTexts(refusal, part, texts);
    if (right === undefined) return [];
    const apply = () => {
      setTexts(right.texts);
      setObjection(null);
    };
    return [{ label: right.label, apply }];
  };
  const field = (part: Part) => ({
    text: texts[part],
    message:
      objection?.part === part ? { message: objection.message, repairs: repairsOf(objection) } : undefined,
    onType: (text: string) => type(part, text),
  });
  const isFull = printer.holes.length >= LIMITS.holeReadings.greatest;
  return (
    <form ref={form} onSubmit={add} noValidate>
      <TextField
        label="Drawn ⌀"
        description="The diameter in the drawing of the gauge, in mm."
        {...field('drawn')}
      />
      <TextField
        label="Measured ⌀"
        description="One or several readings of this hole, with a blank or a semicolon between."
        {...field('measured')}
      />
      <p className={styles['add']}>
        <button type="submit" className="press" disabled={isFull}>
          Add the hole
        </button>
        {isFull ? (
          <span className="line"> a printer keeps up to {LIMITS.holeReadings.greatest} holes</span>
        ) : null}
      </p>
    </form>
  );
}

/** The texts as they were probably meant; several readings only the person can put right. */
function rightedTexts({ code, facts }: Refusal, part: Part, texts: Texts) {
  const parsed = parseReadings(texts[part], DEFINITION);
  if (parsed.kind === 'refused' || parsed.readings.length > 1) return undefined;
  switch (code) {
    case 'hole-looks-like-radius':
      return { label: 'Take it as a radius', texts: { ...texts, [part]: String(facts['diameter']) } };
    case 'hole-looks-like-inches':
      return { label: 'Take it as inches', texts: { ...texts, [part]: `${texts[part].trim()} in` } };
    case 'hole-swapped':
      return { label: 'Swap them', texts: { drawn: texts.measured, measured: texts.drawn } };
    default:
      return undefined;
  }
}

/** The readings of a text in mm, or why it has none. */
function readPart(part: Part, text: string): readonly number[] | string {
  const parsed = parseReadings(text, DEFINITION, { least: 1, most: MOST[part] });
  if (parsed.kind === 'readings') return parsed.readings.map(({ value }) => value);
  return readingsWords(parsed, { definition: DEFINITION, text, value: null, noun: 'A hole' }).message;
}

interface TextFieldProps {
  readonly label: string;
  readonly description: string;
  readonly text: string;
  readonly message: FieldMessage | undefined;
  readonly onType: (text: string) => void;
}

function TextField({ label, description, text, message, onType }: TextFieldProps) {
  const id = useId();
  return (
    <FieldFrame id={id} label={label} layout="row" unit="mm" description={description} message={message}>
      <input
        {...controlAria({ id, label, layout: 'row', unit: 'mm', hasMessage: message !== undefined })}
        className={css['control']}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        size={14}
        value={text}
        onChange={(event) => onType(event.target.value)}
      />
    </FieldFrame>
  );
}
