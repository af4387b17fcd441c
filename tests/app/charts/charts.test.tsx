// @vitest-environment jsdom
import { fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import LengthCharts from '../../../src/app/charts/length-charts.tsx';
import { lengthPanels } from '../../../src/app/charts/length-series.ts';
import { niceTicks, tickTexts } from '../../../src/app/charts/nice-ticks.ts';
import { slopeLabel } from '../../../src/app/charts/slope-label.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { lengthCurve } from '../../../src/core/recommend/length-curve.ts';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import { answerableJoint, insertRecord, jointDocument, resolved } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

vi.setConfig({ testTimeout: 30_000 });

const DRAWER = [
  insertRecord({ id: 'five' }),
  insertRecord({ id: 'slim', knurlDiameter_mm: [4.37], pilotDiameter_mm: [3.82] }),
  insertRecord({ id: 'short', knurlDiameter_mm: [4.95], length_mm: [3.9] }),
  insertRecord({ id: 'four', thread: 'M4', knurlDiameter_mm: [5.9], pilotDiameter_mm: [5.2] }),
];

function given() {
  const { joint, drawer } = resolved(jointDocument({ drawer: DRAWER }));
  const recommendation = recommend(joint, drawer);
  if (recommendation.kind === 'stopped') throw new Error('the joint is stopped');
  return { joint, drawer, recommendation, chosenInsertId: 'slim' };
}

const panelsOf = () =>
  lengthPanels(given(), (insert, lengths) => lengthCurve(answerableJoint(), insert, lengths));

describe('lengthPanels', () => {
  test('are one a diameter of the joint’s thread, the chosen one first', () => {
    const panels = panelsOf();
    expect(panels.map(({ isChosen }) => isChosen)).toEqual([true, false]);
    expect(panels[0]?.own.map(({ insertId }) => insertId)).toEqual(['slim']);
    expect(panels[1]?.own.map(({ insertId }) => insertId).toSorted()).toEqual(['five', 'short']);
  });
  test('run over the same lengths, beyond those of the drawer', () => {
    for (const { points } of panelsOf()) {
      expect(points[0]?.length).toBeLessThan(3.9);
      expect(points.at(-1)?.length).toBeGreaterThan(5.3);
    }
  });
  test('put the chosen insert on its own line', () => {
    const [panel] = panelsOf();
    const own = panel?.own[0];
    if (panel === undefined || own === undefined) throw new Error('no panel');
    const after = panel.points.findIndex(({ length }) => length >= own.length);
    const [low, high] = [panel.points[after - 1], panel.points[after]];
    if (low === undefined || high === undefined) throw new Error('not within the line');
    const share = (own.length - low.length) / (high.length - low.length);
    expectRelative(own.median, low.median + share * (high.median - low.median), 1e-9);
  });
});

const rendered = () =>
  render(
    <DerivationsProvider>
      <LengthCharts {...given()} />
    </DerivationsProvider>,
  );

describe('LengthCharts', () => {
  test('say the same as a table, with units beyond doubt', async () => {
    rendered();
    await userEvent.click(screen.getByText('The charts as a table'));
    const tables = screen.getAllByRole('table');
    expect(tables).toHaveLength(2);
    const [first] = tables;
    if (first === undefined) throw new Error('no table');
    const row = within(first).getByRole('rowheader', { name: '3.63' }).closest('tr');
    const cells = row
      ? within(row)
          .getAllByRole('cell')
          .map(({ textContent }) => textContent)
      : [];
    expect(cells.slice(0, 3).every((text) => text.endsWith('\u00a0N'))).toBe(true);
    expect(cells[3]).toMatch(/N·m$/);
  });
  test('open each number of the table as a calculation that comes to it', async () => {
    rendered();
    await userEvent.click(screen.getByText('The charts as a table'));
    for (const [column, meaning] of [
      ['19 of 20 hold', 'characteristic capacity: 19 of 20 hold it'],
      ['Half hold', 'force that shears the knurl'],
      ['1 of 20 holds', 'what only 1 of 20 holds'],
      ['Pulls out at', 'torque on the screw that shears the knurl, half of all hold it'],
      ['Dial', 'torque to dial'],
      ['Knurl diameter', 'knurl diameter'],
    ] as const) {
      // By label: a role is slow to find among so many buttons.
      const [button] = screen.getAllByLabelText(new RegExp(`^${column}, .*, open derivation$`));
      if (button === undefined) throw new Error(`nothing to open under ${column}`);
      fireEvent.click(button);
      const region = screen.getByLabelText(new RegExp(`^Derivation: ${column}`));
      expect(region.textContent).toContain(`${meaning} = ${button.textContent}`);
      await userEvent.keyboard('{Escape}');
      expect(region).not.toBeInTheDocument();
    }
  });
  test('keep the pictures from a screen reader', () => {
    const { container } = render(<LengthCharts {...given()} />);
    const pictures = container.querySelectorAll('svg.recharts-surface');
    expect(pictures.length).toBeGreaterThan(0);
    for (const picture of pictures) expect(picture.closest('[aria-hidden="true"]')).not.toBeNull();
  });
});

describe('niceTicks', () => {
  test.each([
    [1606, 8, 2000, 500],
    [1590, 8, 1600, 200],
    [0.07, 4, 0.08, 0.02],
    [5, 5, 5, 1],
    [1, 4, 1, 0.5],
  ])('up to %f in at most %i steps end at %f by %f', (greatest, most, end, step) => {
    const ticks = niceTicks(greatest, most);
    expect(ticks[0]).toBe(0);
    expect(ticks[1]).toBe(step);
    expect(ticks.at(-1)).toBe(end);
    expect(ticks.length - 1).toBeLessThanOrEqual(most);
  });
  test('of nothing are still a scale', () => {
    expect(niceTicks(0, 5)).toEqual([0, 1]);
  });
  test('are written with the decimals of their step', () => {
    expect(tickTexts([0, 50, 100], 'N·m')).toEqual(['0.00', '0.05', '0.10']);
    expect(tickTexts([0, 500, 1000], 'N·m')).toEqual(['0.0', '0.5', '1.0']);
  });
});

describe('slopeLabel', () => {
  const frame = {
    area: { x: 50, y: 10, width: 200, height: 100 },
    xDomain: [0, 10],
    yDomain: [0, 1000],
  } as const;
  const line = [0, 2, 4, 6, 8, 10].map((x) => ({ x, y: 50 * x }));
  test('lies along its line, above or below it', () => {
    const above = slopeLabel('median', line, { ...frame, below: false });
    const below = slopeLabel('median', line, { ...frame, below: true });
    // 200 px across for 50 px up: atan(1/4), turned left.
    expectRelative(above?.angle ?? 0, (-Math.atan2(50, 200) * 180) / Math.PI);
    expect(above?.y).toBeLessThan(below?.y ?? 0);
  });
  test('ends inside where the line leaves the frame', () => {
    const steep = line.map(({ x }) => ({ x, y: 200 * x }));
    expect(slopeLabel('more', steep, { ...frame, below: false })?.y).toBeGreaterThanOrEqual(10);
  });
  test('is left out where there is no line to lie on', () => {
    expect(slopeLabel('median', line.slice(0, 1), { ...frame, below: false })).toBeUndefined();
  });
});
