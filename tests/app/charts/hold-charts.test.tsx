// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import HoldCharts from '../../../src/app/charts/hold-charts.tsx';
import { distinctCurves } from '../../../src/app/charts/preload-names.ts';
import { temperatureTicks } from '../../../src/app/charts/temperature-ticks.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { preloadCurves } from '../../../src/core/service/curves.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';

vi.setConfig({ testTimeout: 30_000 });

const curvesOf = (changes: Changes) => preloadCurves(answerableJoint(changes), theInsert());
const rendered = (changes: Changes) =>
  render(
    <DerivationsProvider>
      <HoldCharts joint={answerableJoint(changes)} insert={theInsert()} />
    </DerivationsProvider>,
  );
const WARM: Changes = { gap_mm: 1.1, loads: { serviceTemperature_degC: 44 } };

describe('distinctCurves', () => {
  test('are one with both names where no plastic creeps', () => {
    const named = distinctCurves(curvesOf({ loads: { serviceTemperature_degC: 44 } }));
    expect(named.map(({ name, isWarm }) => [name, isWarm])).toEqual([['23\u00a0°C and 44\u00a0°C', true]]);
  });
  test('are two where the warm one loses more, on a scale of powers of ten', () => {
    const named = distinctCurves(curvesOf(WARM));
    expect(named.map(({ name }) => name)).toEqual(['23\u00a0°C', '44\u00a0°C']);
    const [cool, warm] = named.map(({ points }) => points.at(-1));
    expect(cool?.decade).toBe(5);
    expect(warm?.left).toBeLessThan(cool?.left ?? 0);
  });
  test('rise again at a re-tightening', () => {
    const [curve] = distinctCurves(curvesOf({ ...WARM, loads: { ...WARM.loads, retightenings: 2 } }));
    const lefts = curve?.points.map(({ left }) => left) ?? [];
    const rises = lefts.filter((left, index) => left > (lefts[index - 1] ?? 1));
    expect(rises).toHaveLength(2);
    for (const left of rises) expect(left).toBe(1);
  });
});

describe('temperatureTicks', () => {
  test.each([
    [40, 70, 20, 80],
    [-15, 50, -20, 60],
    [31, 127, 20, 140],
  ])('from room or the service of %i °C to beyond the stop at %i °C', (service, stop, first, last) => {
    const ticks = temperatureTicks(service, stop);
    expect([ticks[0], ticks.at(-1)]).toEqual([first, last]);
    expect(ticks.length).toBeLessThan(11);
  });
});

describe('HoldCharts', () => {
  test('say the same as tables', async () => {
    rendered(WARM);
    await userEvent.click(screen.getByText('The curves as tables'));
    const preload = screen.getByRole('table', { name: 'Clamp force left over time' });
    expect(
      within(preload)
        .getAllByRole('columnheader')
        .map(({ textContent }) => textContent),
    ).toEqual(['After, h', 'at 23\u00a0°C', 'at 44\u00a0°C']);
    const strength = screen.getByRole('table', { name: 'Strength left over temperature' });
    expect(within(strength).getAllByRole('row')[1]).toHaveTextContent('23100 %');
  });
  test('show the band of a little known creep in the picture and both ends in the table', async () => {
    const { container } = rendered(WARM);
    await userEvent.click(screen.getByText('The curves as tables'));
    const preload = screen.getByRole('table', { name: 'Clamp force left over time' });
    const cells = within(preload).getAllByRole('cell');
    const filled = cells.map(({ textContent }) => textContent).filter((text) => text !== '');
    expect(filled).toHaveLength(2 * 13);
    for (const text of filled) {
      expect(text).toMatch(/^\d+\u00a0%(?:, at best \d+\u00a0%)?$/);
    }
    expect(within(preload).getAllByText(/at best/).length).toBeGreaterThan(10);
    expect(screen.getByText(/creep is little known, its lower line counts/)).toBeInTheDocument();
    expect(container.querySelectorAll('.recharts-area-area')).toHaveLength(2);
  });
  test('show the band of a strength in the warmth that is little known, and both ends in the table', async () => {
    const warm: Changes = { ...WARM, host: { material: 'pa12' } };
    const { container } = rendered(warm);
    await userEvent.click(screen.getByText('The curves as tables'));
    expect(screen.getByText(/band: little is known, its lower line counts/)).toBeInTheDocument();
    const bands = [...container.querySelectorAll('.recharts-area-area')].map((path) =>
      path.getAttribute('d'),
    );
    expect(bands).toHaveLength(3);
    for (const outline of bands) expect(outline?.length).toBeGreaterThan(100);
    const strength = screen.getByRole('table', { name: 'Strength left over temperature' });
    expect(within(strength).getAllByText(/at best/).length).toBeGreaterThan(3);
  });
  test('show no band of a polymer that is known', async () => {
    const known: Changes = { ...WARM, host: { material: 'pc' } };
    const { container } = rendered(known);
    await userEvent.click(screen.getByText('The curves as tables'));
    expect(container.querySelectorAll('.recharts-area-area')).toHaveLength(0);
    expect(screen.queryByText(/at best/)).not.toBeInTheDocument();
    expect(screen.queryByText(/little known/)).not.toBeInTheDocument();
  });
  test('open each number of their tables as a calculation, at either end of what is known', async () => {
    rendered(WARM);
    await userEvent.click(screen.getByText('The curves as tables'));
    const last = /^After 100,000 h at 44\u00a0°C, (at best )?\d+\u00a0%, open derivation$/;
    const [careful, best] = screen.getAllByRole('button', { name: last });
    if (careful === undefined || best === undefined) throw new Error('not both ends');
    for (const end of [careful, best]) {
      await userEvent.click(end);
      const opened = screen.getByRole('region', { name: /^Derivation: After 100,000 h at 44/ });
      const share = Number(end.textContent.split('\u00a0')[0]) / 100;
      const found = /clamp force left[^=]*= ([\d.]+)/.exec(opened.textContent)?.[1];
      expect(Math.abs(Number(found) - share)).toBeLessThan(0.005);
      await userEvent.keyboard('{Escape}');
      expect(opened).not.toBeInTheDocument();
    }
    await userEvent.click(
      screen.getByRole('button', { name: 'Strength at 23\u00a0°C, 100\u00a0%, open derivation' }),
    );
    expect(screen.getByRole('region', { name: /^Derivation: Strength at 23/ })).toHaveTextContent(
      'strength left at service temperature = 1',
    );
  });
  test('mark the service temperature and where the program stops', () => {
    rendered(WARM);
    expect(screen.getByText(/^service 44/)).toBeInTheDocument();
    expect(screen.getByText(/^stop above 70/)).toBeInTheDocument();
    expect(screen.getByText('1 year')).toBeInTheDocument();
  });
});
