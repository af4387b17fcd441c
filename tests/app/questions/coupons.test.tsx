// @vitest-environment jsdom
import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { couponFile, meshOf } from '../../../src/app/questions/coupons/coupon-files.ts';
import { couponOf } from '../../../src/app/questions/coupons/coupon-of.ts';
import Coupons from '../../../src/app/questions/coupons/coupons.tsx';
import { lightMap, NOTHING } from '../../../src/app/questions/coupons/light-map.ts';
import { picture } from '../../../src/app/questions/coupons/projection.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import { findHoles } from '../../../src/core/hole-finding/find-holes.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { readSolid } from '../../../src/solids/read-solid.ts';
import { answerableJoint, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

const JOINT = answerableJoint();
const ASSESSMENT = assess(JOINT, theInsert());
const BED = { x: 210, y: 190, z: 180 };
const gauge = (changes = {}) => {
  const wish = {
    kind: 'hole-gauge',
    axis: 'along-build',
    count: 3,
    step: 0.15,
    number: 1,
    bed: BED,
    ...changes,
  } as const;
  const coupon = couponOf(JOINT, ASSESSMENT, wish);
  if (coupon.kind === 'refused') throw new Error(coupon.refusal.code);
  return coupon;
};

beforeEach(() => {
  // jsdom draws nothing.
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(null);
  // jsdom opens no dialogs.
  HTMLDialogElement.prototype.showModal = function open(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close(this: HTMLDialogElement) {
    this.open = false;
  };
});

const shown = () => {
  render(
    <SheetProvider first={SENSOR_LID}>
      <DerivationsProvider>
        <Coupons joint={JOINT} assessment={ASSESSMENT} />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
};
const number = (name: string) => screen.getByLabelText(name);
async function typed(user: ReturnType<typeof userEvent.setup>, label: string, text: string) {
  await user.clear(number(label));
  await user.type(number(label), `${text}{Enter}`);
}

describe('Coupons', () => {
  test('begins with a gauge round the hole to draw, its numbers with their diameters', async () => {
    const user = shown();
    await typed(user, 'Bores', '3');
    await typed(user, 'From one to the next', '0.15');
    const table = screen.getByRole('table', { name: /^Number on the gauge/ });
    const drawn = ASSESSMENT.hole.drawn.value;
    const texts = within(table)
      .getAllByRole('cell')
      .map(({ textContent }) => textContent);
    expect(texts.filter((text) => text !== '')).toEqual([
      '1',
      '2',
      '3',
      (drawn - 0.15).toFixed(2),
      drawn.toFixed(2),
      (drawn + 0.15).toFixed(2),
    ]);
  });
  test('opens the diameter of each bore, the sides on the bed, depth and floor as calculations', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: /^Bore 5, ⌀ \d\.\d\d mm, open derivation$/ }));
    const bore = screen.getByRole('region', { name: /^Derivation: Bore 5/ });
    expect(bore).toHaveTextContent('number of the bore drawn as the joint’s own');
    const drawn = (ASSESSMENT.hole.drawn.value + 0.2).toFixed(2);
    expect(bore).toHaveTextContent(`diameter drawn for this bore = ${drawn} mm`);
    await user.keyboard('{Escape}');
    for (const [name, meaning] of [
      [/^Along the bed’s x, /, 'length of the coupon ='],
      [/^Along the bed’s y, /, 'width of the coupon ='],
      [/^Along the bed’s z, /, 'height of the coupon, its numbers included ='],
      [/^Hole depth, /, 'hole depth ='],
      [/^Floor of the coupon under the hole, 2.0/, 'floor of the coupon under the hole = 2.0 mm'],
    ] as const) {
      await user.click(screen.getByRole('button', { name }));
      expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(meaning);
      await user.keyboard('{Escape}');
    }
    expect(screen.queryByRole('region', { name: /^Derivation/ })).not.toBeInTheDocument();
  });
  test('opens the hole of a coupon with an insert', async () => {
    const user = shown();
    for (const kind of ['Pull coupon', 'Torque coupon']) {
      await user.selectOptions(number('Coupon'), kind);
      await user.click(screen.getByRole('button', { name: /^Hole to draw, / }));
      expect(screen.getByRole('region', { name: /^Derivation: Hole to draw/ })).toBeVisible();
    }
  });
  test('says why a row does not fit on the bed, and how many bores would', async () => {
    const user = shown();
    await typed(user, 'Bores', '40');
    expect(screen.getByRole('alert')).toHaveTextContent(/40 bores are too long for the bed/);
    expect(screen.queryByRole('button', { name: 'Save as 3MF' })).not.toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: /^Bores that fit on the bed, \d+, open/ }));
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      'length of the bed along x',
    );
  });
  test('says what does not stand under the height of the printer, until there is more of it', async () => {
    const user = shown();
    await user.selectOptions(number('Coupon'), 'Pull coupon');
    await user.selectOptions(number('Printed with'), 'lying bores');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    await typed(user, 'Bed, z', '31');
    expect(screen.getByRole('alert')).toHaveTextContent(
      /does not fit on the bed, 200\.0 × 200\.0 × 31\.0 mm/,
    );
    await typed(user, 'Bed, z', '90');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
  });
  test('turns by the arrow keys and says how far', () => {
    shown();
    const table = screen.getByRole('slider', { name: /^Hole gauge on a turntable/ });
    const before = table.getAttribute('aria-valuetext');
    fireEvent.keyDown(table, { key: 'ArrowRight' });
    expect(table).toHaveAttribute('aria-valuenow', '342');
    expect(table.getAttribute('aria-valuetext')).not.toBe(before);
  });
  test('opens a sheet to write on, with what to print with and what to beware of', async () => {
    const user = shown();
    await user.selectOptions(number('Coupon'), 'Pull coupon');
    await user.click(screen.getByRole('button', { name: 'The sheet to write on' }));
    const sheet = screen.getByRole('dialog', { name: 'Pull coupon' });
    expect(sheet).toHaveTextContent(/PETG, layers of 0\.2/);
    expect(sheet).toHaveTextContent('eye protection');
    expect(within(sheet).getByRole('columnheader', { name: 'reading, kg' })).toBeInTheDocument();
    expect(sheet).toHaveTextContent(/as in the part\./);
  });
  test('the sheet counts on from the number of a torque coupon, a line a bore, and says when it lies otherwise', async () => {
    const user = shown();
    await user.selectOptions(number('Coupon'), 'Torque coupon');
    await typed(user, 'Number on it', '7');
    await user.selectOptions(number('Printed with'), 'lying bores');
    await user.click(screen.getByRole('button', { name: 'The sheet to write on' }));
    const sheet = screen.getByRole('dialog', { name: 'Torque coupon' });
    expect(
      within(sheet)
        .getAllByRole('rowheader')
        .slice(0, 3)
        .map(({ textContent }) => textContent),
    ).toEqual(['7, flat', '7, rim', '8, flat']);
    expect(sheet).toHaveTextContent(/along the bed, but upright in the part/);
    expect(sheet).toHaveTextContent(/a washer of at least \d/);
  });
});

describe('couponFile', () => {
  test.each(['stl', '3mf'] as const)('of a gauge as %s holds its bores as drawn', async (format) => {
    const coupon = gauge();
    const file = couponFile(meshOf(coupon), format, { name: 'Hole gauge', title: 'Hole gauge, lid' });
    const reading = await readSolid(new Uint8Array(await file.arrayBuffer()));
    if (reading.kind === 'refused') throw new Error(reading.refusal.code);
    const { holes } = findHoles(reading.solid.mesh);
    const found = holes.map(({ acrossFlats }) => acrossFlats).sort((one, other) => one - other);
    if (coupon.kind !== 'hole-gauge') throw new Error('not a gauge');
    expect(found).toHaveLength(3);
    // Coordinates of an STL are single floats: 2⁻²⁴ of some 100 mm.
    for (const [at, { drawn }] of coupon.bores.entries()) expectRelative(found[at] ?? 0, drawn, 2e-5);
  });
});

describe('picture', () => {
  const mesh = meshOf(gauge());
  test('shows a block from above: what it covers is its box on the bed', () => {
    const { facets } = picture(mesh, { turn: 0, tilt: Math.PI / 2 });
    const across = facets.flatMap(({ corners }) => corners.map(([x]) => x));
    expectRelative(Math.max(...across) - Math.min(...across), gauge().onBed.x, 1e-9);
  });
  test('shows nothing outside of its reach from anywhere, and light between 0 and 1 (law)', () => {
    for (const turn of [0, 0.7, 2.1, 4.4]) {
      for (const tilt of [-1.2, 0.3, 1.4]) {
        const { facets, reach } = picture(mesh, { turn, tilt });
        for (const { corners, light } of facets) {
          expect(light).toBeGreaterThanOrEqual(0);
          expect(light).toBeLessThanOrEqual(1 + 1e-9);
          for (const [x, y] of corners) expect(Math.hypot(x, y)).toBeLessThanOrEqual(reach + 1e-9);
        }
      }
    }
  });
});

describe('lightMap', () => {
  const square = (near: number, light: number) =>
    [
      {
        corners: [
          [-2, -2, near],
          [2, -2, near],
          [2, 2, near],
        ],
        light,
      },
      {
        corners: [
          [-2, -2, near],
          [2, 2, near],
          [-2, 2, near],
        ],
        light,
      },
    ] as const;
  test('shows what is nearest, in whatever order the faces come', () => {
    const faces = [...square(1, 0.25), ...square(3, 0.75)];
    for (const facets of [faces, faces.toReversed()]) {
      const map = lightMap({ facets, reach: 4 }, 40);
      expect(map[20 * 40 + 20]).toBe(0.75);
      expect(map[0]).toBe(NOTHING);
    }
  });
  test('leaves no dot of a square out along its diagonal', () => {
    const map = lightMap({ facets: square(0, 0.5), reach: 2 / 0.94 }, 40);
    // The square fills 0.94² · 0.94²: from 40/2 · (1 − 0.94 · 0.94) dots on.
    const inside = map.filter((value) => value === 0.5).length;
    expect(Math.abs(Math.sqrt(inside) - 40 * 0.94 * 0.94)).toBeLessThan(1);
  });
});
