// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import ExistingHole from '../../../src/app/questions/existing-hole/existing-hole.tsx';
import { useFindings, useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import { type Changes, insertRecord, jointDocument } from '../../support/joints.ts';

// Typing key by key is slow on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

/** Tells the document as it stands, and which insert is shown. */
function Told() {
  const { document } = useSheet();
  const { shown } = useFindings();
  const told = {
    existing: document.joint.holes.existing ?? null,
    wall: document.joint.host.wall,
    chosen: document.chosenInsert,
    shown: shown?.insert.id,
  };
  return <output>{JSON.stringify(told)}</output>;
}

const told = (): unknown => JSON.parse(screen.getByRole('status').textContent);

const DRAWER = [
  insertRecord(),
  insertRecord({ id: 'wider', knurlDiameter_mm: [5.43], pilotDiameter_mm: [4.71] }),
];

function show(changes: Changes = {}, chosenInsert = 'usual') {
  render(
    <SheetProvider first={{ ...jointDocument({ drawer: DRAWER, ...changes }), chosenInsert }}>
      <DerivationsProvider>
        <ExistingHole finder={<p>A file of the part</p>} />
        <Told />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
}

const measured = (diameter_mm: number, depth_mm?: number): Changes => ({
  holes: {
    existing: { diameter_mm, known: 'as-measured', ...(depth_mm === undefined ? {} : { depth_mm }) },
  },
});
const rowOf = (name: RegExp) => screen.getByRole('row', { name });

describe('a hole that is there', () => {
  test('is asked for where none is given, and begins with the hole of this joint', async () => {
    const user = show();
    expect(screen.getByText('A file of the part')).toBeVisible();
    expect(screen.queryByRole('table')).not.toBeInTheDocument();
    await user.selectOptions(screen.getByLabelText('The hole is'), 'as-measured');
    expect(screen.getByLabelText('Diameter measured ⌀')).toHaveValue('4.26');
    expect(told()).toMatchObject({ existing: { diameter_mm: 4.26, known: 'as-measured' } });
    expect(screen.getByText('Fits')).toBeVisible();
    expect(screen.getByText(/nothing has to be rescued/)).toBeVisible();
  });

  test('as drawn says what it is expected to come out at', async () => {
    const user = show();
    await user.selectOptions(screen.getByLabelText('The hole is'), 'as-drawn');
    expect(screen.getByLabelText('Diameter as drawn ⌀')).toHaveValue('4.50');
    expect(screen.getByText(/^Drawn at 4\.50 mm/)).toHaveTextContent('expected to come out at 4.25 mm');
  });

  test('takes a depth and gives it up again', async () => {
    const user = show(measured(4.3));
    const depth = screen.getByLabelText('Its depth');
    await user.type(depth, '5.1{Enter}');
    expect(screen.getByText('Too shallow')).toBeVisible();
    await user.clear(depth);
    await user.type(depth, '{Enter}');
    expect(told()).toHaveProperty('existing', { diameter_mm: 4.3, known: 'as-measured' });
    expect(screen.getByText('Fits')).toBeVisible();
  });

  test('refuses a depth beyond the part, beside the field', async () => {
    const user = show(measured(4.3));
    await user.type(screen.getByLabelText('Its depth'), '12.4{Enter}');
    expect(screen.getByText(/deeper than the part under the face, 11\.3 mm/)).toBeVisible();
    expect(told()).toHaveProperty('existing', { diameter_mm: 4.3, known: 'as-measured' });
  });

  test('opens the derivation of each number below its row', async () => {
    const user = show(measured(4.42, 7));
    const row = rowOf(/^Bite of the knurl/);
    await user.click(within(row).getByRole('button', { name: /^Bite of the knurl/ }));
    expect(screen.getAllByText(/4\.42/).length).toBeGreaterThan(1);
    expect(within(row).getByRole('button', { expanded: true })).toBeVisible();
  });

  test('opens the numbers of its sentences and of its ruler as calculations', async () => {
    const user = show(measured(4.5, 7));
    // A number may stand in the sentence and on the ruler's line.
    const press = async (name: RegExp) => {
      const [button] = screen.getAllByRole('button', { name });
      await user.click(button ?? document.body);
      expect(screen.getByRole('region', { name: /^Derivation/ }).getAttribute('aria-label')).toMatch(name);
      await user.keyboard('{Escape}');
    };
    await press(/Largest bore that the knurl still bites in, 4\.46\smm/);
    await press(/Smallest bore that the pilot drops into, 4\.11\smm/);
    expect(rowOf(/^Bores that fit/)).toHaveTextContent('4.21 mm to 4.46 mm');
  });
});

describe('ways out of a hole that does not serve', () => {
  test('choose another insert', async () => {
    const user = show(measured(4.78));
    expect(screen.getByText('Loose')).toBeVisible();
    await user.click(within(rowOf(/^Another insert/)).getByRole('button', { name: 'choose it' }));
    expect(told()).toMatchObject({ chosen: 'wider', shown: 'wider' });
    expect(screen.getByText('Fits')).toBeVisible();
  });

  test('take the reamed diameter, with the wall that it leaves', async () => {
    const user = show(measured(3.9, 7));
    expect(screen.getByText('Too small')).toBeVisible();
    await user.click(within(rowOf(/^Open the hole up/)).getByRole('button', { name: /^take/ }));
    expect(told()).toMatchObject({
      existing: { diameter_mm: 4.3, known: 'as-measured', depth_mm: 7 },
      wall: { kind: 'measured', thickness_mm: 1.78, lineWidth_mm: 0.43 },
    });
    expect(screen.getByText('Fits')).toBeVisible();
  });

  test('drill it deeper, or draw it anew', async () => {
    const user = show(measured(4.3, 5));
    await user.click(within(rowOf(/^Drill it deeper/)).getByRole('button', { name: /^take 6/ }));
    expect(told()).toHaveProperty('existing.depth_mm', 6);
    expect(screen.getByText('Fits')).toBeVisible();
  });

  test('draw it anew: the hole is designed again', async () => {
    const user = show(measured(5.2));
    expect(screen.getByText('No bite')).toBeVisible();
    await user.click(within(rowOf(/^Print anew/)).getByRole('button', { name: 'draw it anew' }));
    expect(told()).toHaveProperty('existing', null);
    expect(screen.queryByRole('table')).not.toBeInTheDocument();
  });

  test('say why not, and of a self-tapping insert that no force is known', () => {
    show(measured(4.78));
    expect(rowOf(/^Open the hole up/)).toHaveTextContent('At 4.78 mm it is wide enough already.');
    const selfTapping = rowOf(/^A self-tapping insert/);
    expect(within(selfTapping).getByText('not known')).toBeVisible();
    expect(within(selfTapping).getByText(/common practice/)).toBeVisible();
  });
});
