// @vitest-environment jsdom
import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { HoleFinder } from '../../../src/app/questions/existing-hole/hole-finder.tsx';
import { useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { FoundHole } from '../../../src/core/hole-finding/hole.ts';
import type { FindHolesOfFile } from '../../../src/workers/holes-client.ts';
import type { HolesOfFile } from '../../../src/workers/holes-requests.ts';

const HOLE: FoundHole = {
  mouth: { x: 3, y: 4, z: 9 },
  direction: { x: 0, y: 0, z: -1 },
  lie: 'vertical',
  tilt: 0,
  cornerDiameter: 4.4500012,
  acrossFlats: 4.4405,
  depth: 6.7,
  chamfers: { mouth: 0.5, far: 0 },
  depthAllRound: 6.7,
  facets: 48,
  turn: 6.2832,
  ends: { mouth: 'open', far: 'closed' },
};
const found = (holes: readonly FoundHole[]): HolesOfFile => ({
  kind: 'found',
  found: { holes, total: holes.length, isInsideOut: false },
  format: 'stl-binary',
  triangles: 1_284,
  extent: 41.3,
  notices: [],
});

/** Shows the hole that the joint has, as the document holds it. */
function HoleOfDocument() {
  const { document } = useSheet();
  return (
    <output aria-label="hole of the joint">{JSON.stringify(document.joint.holes.existing ?? null)}</output>
  );
}
const holeOfDocument = (): unknown =>
  JSON.parse(screen.getByRole('status', { name: 'hole of the joint' }).textContent);
const status = () => screen.getByRole('status', { name: '' });
const shown = (find: FindHolesOfFile) => {
  render(
    <SheetProvider first={SENSOR_LID}>
      <DerivationsProvider>
        <HoleFinder find={find} />
      </DerivationsProvider>
      <HoleOfDocument />
    </SheetProvider>,
  );
  return userEvent.setup();
};
const field = () => screen.getByLabelText(/^Read an STL or 3MF/);
const part = () => new File(['solid'], 'bracket.stl');

describe('HoleFinder', () => {
  test('lists the holes of a file, and takes one over as drawn', async () => {
    const user = shown(() => Promise.resolve({ kind: 'done', output: found([HOLE]) }));
    fireEvent.change(field(), { target: { files: [part()] } });
    const table = await screen.findByRole('table', { name: 'Holes of the part' });
    expect(within(table).getByRole('rowheader')).toHaveTextContent('4.45');
    expect(status()).toHaveTextContent('bracket.stl: binary STL, 1,284 triangles, 41.3');
    await user.click(screen.getByRole('button', { name: /^Use hole 1/ }));
    expect(status()).toHaveTextContent('Hole 1, ⌀ 4.45 mm, is taken over');
    expect(holeOfDocument()).toEqual({ diameter_mm: 4.45, known: 'as-drawn', depth_mm: 7.2 });
  });
  test('opens what was found of a hole as calculations', async () => {
    const user = shown(() => Promise.resolve({ kind: 'done', output: found([HOLE]) }));
    fireEvent.change(field(), { target: { files: [part()] } });
    await user.click(await screen.findByRole('button', { name: 'Hole 1, depth, 7.2 mm, open derivation' }));
    expect(screen.getByRole('region', { name: /^Derivation: Hole 1, depth/ })).toHaveTextContent(
      'height of the chamfer at the mouth0.5',
    );
  });
  test('tells holes apart by their ends, their lie and where their mouth is', async () => {
    const leaning: FoundHole = {
      ...HOLE,
      lie: 'oblique',
      tilt: 0.5585,
      direction: { x: 0.53, y: 0, z: -0.848 },
      ends: { mouth: 'wider', far: 'open' },
      mouth: { x: 12.25, y: -8.5, z: 7 },
    };
    const user = shown(() => Promise.resolve({ kind: 'done', output: found([HOLE, leaning]) }));
    fireEvent.change(field(), { target: { files: [part()] } });
    // Below each row stands the empty one that its calculations open in.
    const [, one, , other] = within(await screen.findByRole('table')).getAllByRole('row');
    expect(one).toHaveTextContent(/upright\s*blind\s*3\.0, 4\.0, 9\.0/);
    expect(other).toHaveTextContent(/oblique, 32°\s*wider mouth, through\s*12\.25, [−-]8\.5, 7\.0/);
    await user.click(screen.getByRole('button', { name: 'Hole 2, lean of the axis, 32°, open derivation' }));
    expect(screen.getByRole('region', { name: /^Derivation: Hole 2, lean/ })).toHaveTextContent(
      'sine of the angle between the axis and z, the direction of printing = 0.53',
    );
  });
  test('says why a file is not read, and keeps the joint', async () => {
    const refusal = { code: 'truncated', bytes: 900, expected: 1284 } as const;
    shown(() => Promise.resolve({ kind: 'done', output: { kind: 'refused', refusal } }));
    fireEvent.change(field(), { target: { files: [part()] } });
    expect(await screen.findByRole('alert')).toHaveTextContent('bracket.stl: The file ends too early.');
    expect(holeOfDocument()).toBeNull();
  });
  test('shows how far it is and can be stopped', async () => {
    const user = shown(
      (_, options) =>
        new Promise((resolve) => {
          options?.onProgress?.(0.4);
          options?.signal?.addEventListener('abort', () => resolve({ kind: 'cancelled' }));
        }),
    );
    fireEvent.change(field(), { target: { files: [part()] } });
    expect(await screen.findByText(/Reading bracket.stl, 40 of 100/)).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(screen.queryByText(/Reading/)).not.toBeInTheDocument();
  });
  test('takes a file that is dropped, and says when it has no hole', async () => {
    shown(() => Promise.resolve({ kind: 'done', output: found([]) }));
    const place = field().closest('div');
    if (place === null) throw new Error('the field stands nowhere');
    fireEvent.drop(place, { dataTransfer: { files: [part()] } });
    expect(await screen.findByText(/No round hole was found/)).toBeInTheDocument();
  });
  test('says so when the worker fails', async () => {
    shown(() => Promise.resolve({ kind: 'failed', code: 'worker-died', message: 'gone' }));
    fireEvent.change(field(), { target: { files: [part()] } });
    expect(await screen.findByRole('alert')).toHaveTextContent('Try again');
  });
});
