import { holeSearch } from '../core/hole-finding/find-holes.ts';
import { solidReading } from '../solids/read-solid.ts';
import { type InSteps, READING_LIMITS, stretch } from '../solids/reading.ts';
import type { HolesOfFile, HolesRequests } from './holes-requests.ts';
import type { FromWorkerOf, Port, ToWorkerOf } from './line.ts';
import type { Pause } from './pause.ts';
import { type Report, serve } from './serve.ts';

/** Share of the way that reading the file is; the rest is the search. */
const READING = { from: 0, to: 0.6 } as const;
const SEARCH = { from: READING.to, to: 1 } as const;

/** Takes steps one by one, with a report after each; undefined where the request was taken back. */
async function stepByStep<Result extends object>(
  steps: InSteps<Result>,
  report: Report,
): Promise<Result | undefined> {
  let most = 0;
  for (;;) {
    const step = await steps.next();
    if (step.done === true) return step.value;
    // A part that turns out to need others makes the way longer: what was told is not taken back.
    most = Math.max(most, step.value);
    if (!(await report(most))) return undefined;
  }
}

async function holesOfFile(file: Blob, report: Report): Promise<HolesOfFile | undefined> {
  const limit = READING_LIMITS.fileBytes;
  // Before its bytes are taken in.
  if (file.size > limit)
    return { kind: 'refused', refusal: { code: 'file-too-large', bytes: file.size, limit } };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const reading = await stepByStep(stretch(solidReading(bytes), READING), report);
  if (reading === undefined || reading.kind === 'refused') return reading;
  const { mesh, format, extent, notices } = reading.solid;
  const found = await stepByStep(stretch(holeSearch(mesh), SEARCH), report);
  if (found === undefined) return undefined;
  return { kind: 'found', found, format, triangles: mesh.triangles.length / 3, extent, notices };
}

/**
 * Answers requests for the holes of files until the line closes.
 *
 * @param port - the line to whoever asks
 * @param pause - waits until messages that have arrived are handled
 */
export function serveHoles(
  port: Port<FromWorkerOf<HolesRequests>, ToWorkerOf<HolesRequests>>,
  pause: Pause,
): void {
  serve<HolesRequests>(port, pause, ({ input }, report) => holesOfFile(input, report));
}
