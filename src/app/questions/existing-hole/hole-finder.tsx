import { useId, useRef, useState } from 'react';
import { depthFromFace, type FoundHole } from '../../../core/hole-finding/hole.ts';
import { decimalText, diameterNumber, lengthText } from '../../../wording/amount.ts';
import { SOLID_FORMATS, sentenceOfReading, sentenceOfReadingNotice } from '../../../wording/solids.ts';
import { type FindHolesOfFile, findHolesOfFile } from '../../../workers/holes-client.ts';
import type { HolesOfFile } from '../../../workers/holes-requests.ts';
import { fieldKey } from '../../state/sheet.ts';
import { useSheetActions } from '../../state/sheet-context.ts';
import { FoundTable } from './found-table.tsx';
import { EXISTING_PATH, type GivenHole } from './hole-edits.ts';
import { PLACE } from './hole-fields.tsx';
import styles from './hole-finder.module.css';
import { useDroppedFile } from './use-dropped-file.ts';

type Found = Extract<HolesOfFile, { kind: 'found' }>;

type State =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading'; readonly name: string; readonly share: number }
  | { readonly kind: 'refused'; readonly name: string; readonly sentence: string }
  | { readonly kind: 'found'; readonly name: string; readonly holes: Found; readonly used?: string };

interface HoleFinderProps {
  /** What finds the holes; by default a worker. */
  readonly find?: FindHolesOfFile;
}

/** Reads a file of the part and lists its holes, so that one of them can be taken over. */
export function HoleFinder({ find = findHolesOfFile }: HoleFinderProps) {
  const id = useId();
  const [state, setState] = useState<State>({ kind: 'idle' });
  const { edit } = useSheetActions();
  const running = useRef<AbortController | null>(null);
  const read = async (file: File | undefined) => {
    if (file === undefined) return;
    running.current?.abort();
    const run = new AbortController();
    running.current = run;
    const { name } = file;
    setState({ kind: 'reading', name, share: 0 });
    const outcome = await find(file, {
      onProgress: (share) => {
        if (running.current === run) setState({ kind: 'reading', name, share });
      },
      signal: run.signal,
    });
    if (running.current !== run) return;
    running.current = null;
    if (outcome.kind === 'cancelled') setState({ kind: 'idle' });
    else if (outcome.kind === 'failed') {
      setState({
        kind: 'refused',
        name,
        sentence: 'The reading stopped by a fault of this page. Try again.',
      });
    } else if (outcome.output.kind === 'refused') {
      setState({ kind: 'refused', name, sentence: sentenceOfReading(outcome.output.refusal) });
    } else setState({ kind: 'found', name, holes: outcome.output });
  };
  const take = (hole: FoundHole, number: number) => {
    // A hole that does not fit the part is said at the fields, where it can be changed.
    edit(fieldKey(EXISTING_PATH, PLACE), { path: EXISTING_PATH, value: existingOf(hole) });
    const used = `Hole ${number}, ⌀ ${diameterNumber(hole.cornerDiameter)} mm, is taken over as drawn.`;
    setState((before) => (before.kind === 'found' ? { ...before, used } : before));
  };
  const [place, isOver] = useDroppedFile((file) => void read(file));
  return (
    <div ref={place} className={styles.finder} data-over={isOver || undefined}>
      <p>
        <label htmlFor={id}>Read an STL or 3MF of the part and find its holes:</label>{' '}
        <input
          id={id}
          type="file"
          accept=".stl,.3mf,model/stl,model/3mf"
          onChange={(event) => {
            void read(event.target.files?.[0]);
            // The same file can be chosen again.
            event.target.value = '';
          }}
        />{' '}
        <span className={styles.quiet}>or drop it here; it stays on this device</span>
      </p>
      <div role="status">
        {state.kind === 'reading' ? (
          <p>
            Reading {state.name}, {decimalText(100 * state.share, 0)} of 100.{' '}
            <button type="button" className="press" onClick={() => running.current?.abort()}>
              Stop
            </button>
          </p>
        ) : null}
        {state.kind === 'found' ? (
          <p>
            {summaryOf(state.name, state.holes)} {state.used}
          </p>
        ) : null}
      </div>
      {state.kind === 'refused' ? (
        <p role="alert">
          <b>Not taken.</b> {state.name}: {state.sentence}
        </p>
      ) : null}
      {state.kind === 'found' && state.holes.found.holes.length > 0 ? (
        <FoundTable holes={state.holes.found.holes} onUse={take} />
      ) : null}
    </div>
  );
}

function summaryOf(name: string, { found, format, triangles, extent, notices }: Found): string {
  const part = `${name}: ${SOLID_FORMATS[format]}, ${decimalText(triangles, 0)} triangles, ${lengthText(extent)} long.`;
  const holes =
    found.total === 0
      ? 'No round hole was found in it.'
      : found.total > found.holes.length
        ? `${decimalText(found.total, 0)} holes; the first ${found.holes.length} are listed.`
        : `${found.total === 1 ? 'One hole.' : `${decimalText(found.total, 0)} holes.`}`;
  const inside = found.isInsideOut ? ['Its surface is inside out; it was turned.'] : [];
  return [part, holes, ...inside, ...notices.map(sentenceOfReadingNotice)].join(' ');
}

/** A mesh holds more digits than anybody draws: to a thousandth of a millimetre. */
const rounded = (length: number): number => Number(length.toFixed(3));

const existingOf = (hole: FoundHole): GivenHole => ({
  diameter_mm: rounded(hole.cornerDiameter),
  known: 'as-drawn',
  depth_mm: rounded(depthFromFace(hole)),
});
