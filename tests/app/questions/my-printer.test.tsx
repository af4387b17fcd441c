// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useEffect } from 'react';
import { beforeAll, describe, expect, test } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import MyPrinter from '../../../src/app/questions/my-printer/my-printer.tsx';
import { useFindings, useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { HoleReadingRecord, JointDocument, PrinterRecord } from '../../../src/storage/document.ts';
import { type Changes, jointDocument } from '../../support/joints.ts';
import { printerRecord } from '../../support/printers.ts';

beforeAll(async () => {
  // What comes late in the page is there at once: a busy machine is slow, not wrong.
  await Promise.all([
    import('../../../src/app/charts/hole-errors-chart.tsx'),
    import('../../../src/app/questions/my-printer/paste-holes.tsx'),
  ]);
});

let seen: JointDocument = jointDocument();
let drawn = 0;
function Watch() {
  const { document } = useSheet();
  const { shown } = useFindings();
  useEffect(() => {
    seen = document;
    drawn = shown?.assessment.hole.drawn.value ?? 0;
  }, [document, shown]);
  return null;
}
const pin = (drawn_mm: number, measured: number, changes: Partial<HoleReadingRecord> = {}) => ({
  drawn_mm,
  measured_mm: [measured],
  instrument: 'pin-gauge' as const,
  axis: 'vertical' as const,
  ...changes,
});
/** About half of what an unknown printer takes. */
const HOLES = [pin(3.5, 3.33), pin(4.1, 3.98), pin(4.7, 4.61), pin(5.3, 5.24)];

function show(printers: readonly PrinterRecord[] = [], changes: Changes = {}) {
  const named = printers[0] ? { printer: printers[0].id } : {};
  render(
    <SheetProvider first={{ ...jointDocument({ ...named, ...changes }), printers: [...printers] }}>
      <DerivationsProvider>
        <MyPrinter />
        <Watch />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
}
const withHoles = (holes: readonly HoleReadingRecord[] = HOLES, changes: Partial<PrinterRecord> = {}) =>
  printerRecord({ holes: [...holes], ...changes });
const holesNow = () => seen.printers[0]?.holes ?? [];
const part = (name: string) => screen.getByRole('region', { name });
/** The press of each hole that is shown. */
const editable = () => screen.getAllByRole('button', { name: /^Edit hole/ });
const table = () => screen.getByRole('table', { name: /^Holes read on/ });
type User = ReturnType<typeof userEvent.setup>;
async function enter(user: User, one: string, other: string) {
  const form = part('More holes');
  await user.clear(within(form).getByLabelText('Drawn ⌀'));
  await user.type(within(form).getByLabelText('Drawn ⌀'), one);
  await user.clear(within(form).getByLabelText('Measured ⌀'));
  await user.type(within(form).getByLabelText('Measured ⌀'), `${other}{Enter}`);
}
async function paste(user: User, text: string) {
  await user.click(screen.getByRole('button', { name: 'Paste many holes' }));
  await user.click(await screen.findByLabelText(/^One hole a line/));
  await user.paste(text);
}

describe('MyPrinter, the profile', () => {
  test('without a printer says what an unknown one does, and what a coupon hole would gain', async () => {
    show();
    expect(await screen.findByText('How an unknown printer closes holes')).toBeVisible();
    expect(part('The next coupon hole')).toHaveTextContent(
      /Print it at ⌀ 4\.\d+\smm\. .* scatter .* falls from 0\.1\d+\smm to 0\.0\d+\smm, and the chance that it fits rises/,
    );
    expect(screen.queryByRole('table', { name: /^Holes read on/ })).not.toBeInTheDocument();
  });
  test('is added with the joint’s material and layers, named, renamed and taken out', async () => {
    const user = show();
    await user.click(screen.getByRole('button', { name: 'Add a printer' }));
    expect(seen.printers).toMatchObject([
      { id: 'printer-1', material: 'petg', layerHeight_mm: 0.2, holes: [] },
    ]);
    expect(seen.joint.printer).toBe('printer-1');
    const name = screen.getByLabelText('Name of the printer');
    await user.clear(name);
    await user.tab();
    expect(seen.printers[0]?.name).toBe('Printer 1');
    await user.clear(name);
    await user.type(name, 'Cellar, black PETG{Enter}');
    expect(seen.printers[0]?.name).toBe('Cellar, black PETG');
    await user.click(screen.getByRole('button', { name: 'Take out Cellar, black PETG' }));
    expect(seen.printers).toEqual([]);
    expect(seen.joint).not.toHaveProperty('printer');
  });
  test('is chosen for the joint, or none', async () => {
    const user = show([withHoles(), printerRecord({ id: 'cellar', name: 'Cellar printer' })], {
      holes: { step_mm: 0.01 },
    });
    const measured = drawn;
    await user.selectOptions(screen.getByLabelText('This joint is printed on'), 'Cellar printer');
    expect(seen.joint.printer).toBe('cellar');
    expect(drawn).toBeGreaterThan(measured);
    await user.selectOptions(screen.getByLabelText('This joint is printed on'), 'an unknown printer');
    expect(seen.joint).not.toHaveProperty('printer');
  });
});

describe('MyPrinter, holes', () => {
  test('are entered one after the other, with a decimal comma and several readings', async () => {
    const user = show([printerRecord()]);
    await user.selectOptions(screen.getByLabelText('Read with'), 'largest pin');
    await enter(user, '4,1', '3,98; 3,97');
    expect(holesNow()).toEqual([
      { drawn_mm: 4.1, measured_mm: [3.98, 3.97], instrument: 'pin-gauge', axis: 'vertical' },
    ]);
    expect(within(part('More holes')).getByLabelText('Drawn ⌀')).toHaveFocus();
    expect(screen.getByText(/^One hole was read/)).toBeVisible();
    await enter(user, '4.6', '4.45');
    expect(holesNow()).toHaveLength(2);
  });
  test.each([
    ['a radius', '4.1', '1.96', /Is it a radius\? The diameter would be 3\.92/],
    ['inches below the least hole', '4.1', '0.157', /Is it in inches\? 0\.157\sin would be 3\.9878\smm/],
    ['inches', '6.5', '0.25', /Was it read in inches\? 6\.35\smm would suit/],
    ['drawn and measured swapped', '4.0', '4.12', /Were drawn and measured swapped\?/],
    ['another hole', '4.1', '6.3', /Is it another hole, or a slip of a digit\?/],
    ['no number', '4.1', 'lots', /lots/],
  ])(
    'that are %s are not taken, with the likely cause, and nothing typed is lost',
    async (_, one, other, why) => {
      const user = show([withHoles()]);
      await enter(user, one, other);
      expect(screen.getByRole('alert')).toHaveTextContent(why);
      expect(holesNow()).toHaveLength(4);
      expect(within(part('More holes')).getByLabelText('Measured ⌀')).toHaveValue(other);
    },
  );
  test.each([
    ['Take it as a radius', '4.1', '1.96', 4.1, 3.92],
    ['Take it as inches', '6.5', '0.25', 6.5, 6.35],
    ['Swap them', '4.0', '4.12', 4.12, 4],
  ])('go in after “%s”', async (label, one, other, drawnThen, measuredThen) => {
    const user = show([withHoles()]);
    await enter(user, one, other);
    await user.click(screen.getByRole('button', { name: label }));
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Add the hole' }));
    expect(holesNow()[4]).toMatchObject({ drawn_mm: drawnThen, measured_mm: [measuredThen] });
  });
  test('say what they are wide and how far off; the one far from the others is named and kept', async () => {
    show([withHoles([...HOLES, pin(4.4, 3.86), pin(5, 4.93)])]);
    const rows = editable().map((press) => press.closest('tr'));
    expect(rows).toHaveLength(6);
    expect(rows[1]).toHaveTextContent(/4\.10.*3\.98.*3\.99.*−0\.11/);
    expect(rows.map((row) => /far from the others/.test(row?.textContent ?? ''))).toEqual([
      false,
      false,
      false,
      false,
      true,
      false,
    ]);
    expect(screen.getByText(/^One of six lies far from the others/)).toBeVisible();
  });
  test('are put right in their own fields; a refused one keeps its text, with a press that repairs it', async () => {
    const user = show([withHoles()]);
    await user.click(screen.getByRole('button', { name: 'Edit hole 2' }));
    const fields = within(table());
    expect(fields.getByLabelText('Drawn ⌀')).toHaveFocus();
    const readings = fields.getByLabelText('Measured ⌀');
    await user.clear(readings);
    await user.type(readings, '1.98{Enter}');
    expect(fields.getByRole('alert')).toHaveTextContent('Is it a radius?');
    expect(holesNow()[1]?.measured_mm).toEqual([3.98]);
    await user.click(fields.getByRole('button', { name: 'Take it as a radius' }));
    expect(holesNow()[1]?.measured_mm).toEqual([3.96]);
  });
  test('are taken out, and the next one’s press has the focus', async () => {
    const user = show([withHoles()]);
    await user.click(screen.getByRole('button', { name: 'Take out hole 2' }));
    expect(holesNow().map(({ drawn_mm }) => drawn_mm)).toEqual([3.5, 4.7, 5.3]);
    await expect
      .poll(() => document.activeElement)
      .toBe(screen.getByRole('button', { name: 'Take out hole 2' }));
  });
  test('are folded when there are many', async () => {
    const user = show([withHoles(Array.from({ length: 60 }, (_, at) => pin(4.1, 3.95 + (at % 7) / 100)))]);
    expect(editable()).toHaveLength(25);
    await user.click(screen.getByRole('button', { name: 'Show all 60 holes' }));
    expect(editable()).toHaveLength(60);
  });
});

describe('MyPrinter, many holes', () => {
  test('go in from lines with tabs, semicolons or blanks; the bad ones stay with their reason', async () => {
    const user = show([withHoles()]);
    await paste(user, 'drawn\tmeasured\n3,0\t2,82\n4.20; 4.08; 4.07\n4.5 2.2\n4.6 4.5x');
    expect(screen.getByRole('status')).toHaveTextContent('2 lines are holes; 2 are not taken');
    expect(screen.getByText(/^Line 4: .*Is it a radius/)).toBeVisible();
    expect(screen.getByText(/^Line 5: /)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Take 2 holes' }));
    expect(holesNow().slice(4)).toMatchObject([
      { drawn_mm: 3, measured_mm: [2.82] },
      { drawn_mm: 4.2, measured_mm: [4.08, 4.07] },
    ]);
    expect(screen.getByLabelText(/^One hole a line/)).toHaveValue('drawn\tmeasured\n4.5 2.2\n4.6 4.5x');
  });
  test('ten thousand are answered with the limit; what is not taken stays in the field', async () => {
    const user = show([withHoles()]);
    const lines = Array.from({ length: 10_000 }, (_, at) => `4.${at % 10}0;4.${at % 10}0`);
    await paste(user, lines.join('\n'));
    expect(
      await screen.findByText(/^The lines hold 10,000 holes\. A printer keeps up to 500, .* room for 496/, {
        exact: false,
      }),
    ).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Take the first 496' }));
    expect(holesNow()).toHaveLength(500);
    const left = screen.getByLabelText<HTMLTextAreaElement>(/^One hole a line/).value;
    expect(left.split('\n')).toHaveLength(10_000 - 496);
    expect(within(part('More holes')).getByRole('button', { name: 'Add the hole' })).toBeDisabled();
  });
  test('that print larger than drawn ask for the order of the columns', async () => {
    const user = show([printerRecord()]);
    await paste(user, '3.9 4.1\n4.4 4.6\n4.9 5.1');
    expect(screen.getByText(/Are the columns the other way round\?/)).toBeVisible();
    await user.selectOptions(screen.getByLabelText('Each line has'), 'measured, then drawn');
    expect(screen.queryByText(/Are the columns the other way round\?/)).not.toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Take 3 holes' }));
    expect(holesNow()[0]).toMatchObject({ drawn_mm: 4.1, measured_mm: [3.9] });
  });
});

describe('MyPrinter, what follows', () => {
  test('is drawn larger, or typed into the slicer, never both', async () => {
    const user = show([withHoles()], { holes: { step_mm: 0.01 } });
    const inCad = drawn;
    expect(part('To draw and to type')).toHaveTextContent(
      /Draw ⌀ [\d.]+\smm\. .*Leave the slicer’s own hole compensation at 0/,
    );
    await user.selectOptions(screen.getByLabelText('Holes are compensated'), 'in the slicer');
    expect(drawn).toBeLessThan(inCad);
    const typed = screen.getByRole('button', { name: /^Expansion on the diameter, 0\.\d\d/ }).textContent;
    expect(Math.abs(drawn + Number.parseFloat(typed) - inCad)).toBeLessThan(0.011);
    await user.selectOptions(screen.getByLabelText('Gauge was printed'), 'with the slicer’s own');
    expect(part('To draw and to type')).toHaveTextContent(
      'Leave the slicer’s compensation as it was when the gauge',
    );
    expect(screen.queryByRole('button', { name: /^Expansion/ })).not.toBeInTheDocument();
    await user.selectOptions(screen.getByLabelText('Holes are compensated'), 'in CAD');
    expect(part('To draw and to type')).toHaveTextContent('What was read does not apply');
  });
  test('counts the corners of the exported polygon', async () => {
    const user = show([withHoles()], { holes: { step_mm: 0.01 } });
    const circle = drawn;
    await user.type(screen.getByLabelText('Corners of the exported circle'), '12{Enter}');
    expect(seen.joint.holes.facets).toBe(12);
    expect(drawn).toBeGreaterThan(circle + 0.1);
  });
  test('opens the numbers of the curve, assumed and with the holes, each with its uncertainty', async () => {
    const user = show([withHoles()]);
    const table = screen.getByRole('table', { name: /^The curve: a/ });
    const names = within(table)
      .getAllByRole('button')
      .map((button) => button.getAttribute('aria-label'));
    expect(names).toHaveLength(10);
    await user.click(
      within(table).getByRole('button', {
        name: /^Standard uncertainty of Printed less drawn at 4 mm, assumed, 0\.10/,
      }),
    );
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent('before any reading');
    await user.click(
      within(table).getByRole('button', {
        name: /^Standard uncertainty of Printed less drawn at 4 mm, 0\.0\d/,
      }),
    );
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      'uncertainty of the offset of the line',
    );
  });
  test('shows the curve of the other axis on demand, as picture and table', async () => {
    const user = show([withHoles()]);
    expect(await screen.findByText('How Attic printer closes vertical holes')).toBeVisible();
    await user.click(screen.getByText('The picture as a table'));
    expect(screen.getByRole('table', { name: /^The holes that were read/ })).toBeInTheDocument();
    await user.selectOptions(screen.getByLabelText('Curve of the holes that are'), 'horizontal');
    expect(await screen.findByText('How Attic printer closes horizontal holes')).toBeVisible();
    expect(screen.getByText(/^No hole of this printer has been read along this axis/)).toBeVisible();
  });
  test('clears the flare of the first layers at a mouth on the bed', async () => {
    const user = show([withHoles()]);
    expect(screen.getByRole('button', { name: /^Chamfer of a mouth on the bed, 0\.5/ })).toBeVisible();
    await user.type(screen.getByLabelText('First layer spreads, a side'), '0.25{Enter}');
    await user.type(screen.getByLabelText('and dies out over layers'), '3{Enter}');
    expect(seen.printers[0]).toMatchObject({ firstLayerFlare_mm: 0.25, flaredLayers: 3 });
    expect(screen.getByRole('button', { name: /^Chamfer of a mouth on the bed, 0\.58/ })).toBeVisible();
  });
  test('opens the derivation of a bore', async () => {
    const user = show([withHoles()]);
    await user.click(screen.getByRole('button', { name: /^Bore of hole 2, 3\.99/ }));
    expect(screen.getByText(/step between one gauge and the next/)).toBeVisible();
  });
});
