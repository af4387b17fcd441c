import { useId, useRef, useState } from 'react';
import type { FoundHole } from '../../../core/hole-finding/hole.ts';
import { decimalText, diameterNumber, lengthNumber, lengthText } from '../../../wording/amount.ts';
import {
  LIE_NAMES,
  SOLID_FORMATS,
  sentenceOfReading,
  sentenceOfReadingNotice,
} from '../../../wording/solids.ts';
import { type FindHolesOfFile, findHolesOfFile } from '../../../workers/holes-client.ts';
import type { HolesOfFile } from '../../../workers/holes-requests.ts';
import { fieldKey } from '../../state/sheet.ts';
import { useSheetActions } from '../../state/sheet-context.ts';
import { EXISTING_PATH } from './hole-edits.ts';
import { PLACE } from './hole-fields.tsx';
import styles from './hole-finder.module.css';
import { useDroppedFile } from './use-dropped-file.ts';

type Found = Extract<HolesOfFile, { kind: 'found' }>;

type State =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading'; readonly name: string; readonly share: number }
  | { readonly kind: 'refused'; readonly name: string; readonly sentence: string }
  | { readonly kind: 'found'; readonly name: string; readonly holes: Found };

interface HoleFinderProps {
  /** What finds the holes; by default a worker. */
  readonly find?: FindHolesOfFile;
}

/** Reads a file of the part and lists its holes, so that one of them can be taken over. */
export function HoleFinder({ find = findHolesOfFile }: HoleFinderProps) {
  const id = useId();
  const [state, setState] = useState<State>({ kind: 'idle' });
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
  const [place, isOver] = useDroppedFile((file) => void read(file));
  return (
    <div ref={place} className={styles.finder} data-over={isOver || undefined}>
      <p>
        <label htmlFor={id}>Find the hole in a file of the part, STL or 3MF:</label>{' '}
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
        {state.kind === 'found' ? <p>{summaryOf(state.name, state.holes)}</p> : null}
      </div>
      {state.kind === 'refused' ? (
        <p role="alert">
          <b>Not taken.</b> {state.name}: {state.sentence}
        </p>
      ) : null}
      {state.kind === 'found' ? <FoundTable holes={state.holes} /> : null}
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

function FoundTable({ holes: { found } }: { readonly holes: Found }) {
  if (found.holes.length === 0) return null;
  return (
    <table className={styles.holes}>
      <caption className="out-of-sight">Holes of the part</caption>
      <thead>
        <tr>
          <th scope="col">⌀ drawn, mm</th>
          <th scope="col">across flats</th>
          <th scope="col">deep</th>
          <th scope="col">corners</th>
          <th scope="col">axis</th>
          <th scope="col">
            <span className="out-of-sight">Take it over</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {found.holes
          .map((hole, at) => ({ hole, at }))
          .map(({ hole, at }) => (
            <HoleRow key={at} hole={hole} number={at + 1} />
          ))}
      </tbody>
    </table>
  );
}

function HoleRow({ hole, number }: { readonly hole: FoundHole; readonly number: number }) {
  const { edit } = useSheetActions();
  const take = () =>
    // A hole that does not fit the part is said at the fields below, where it can be changed.
    edit(fieldKey(EXISTING_PATH, PLACE), {
      path: EXISTING_PATH,
      value: {
        diameter_mm: rounded(hole.cornerDiameter),
        known: 'as-drawn',
        depth_mm: rounded(hole.depth),
      },
    });
  return (
    <tr>
      <th scope="row">{diameterNumber(hole.cornerDiameter)}</th>
      <td>{diameterNumber(hole.acrossFlats)}</td>
      <td>
        {lengthNumber(hole.depth)}
        {hole.ends.far === 'open' ? ', through' : ''}
      </td>
      <td>{hole.facets}</td>
      <td>{LIE_NAMES[hole.lie]}</td>
      <td>
        <button
          type="button"
          className="press"
          aria-label={`Use hole ${number}, ${diameterNumber(hole.cornerDiameter)} mm`}
          onClick={take}
        >
          Use
        </button>
      </td>
    </tr>
  );
}

/** A mesh holds more digits than anybody draws: to a thousandth of a millimetre. */
const rounded = (length: number): number => Number(length.toFixed(3));
