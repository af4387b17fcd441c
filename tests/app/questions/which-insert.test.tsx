// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { WhichInsert } from '../../../src/app/questions/which-insert/which-insert.tsx';
import { recommend } from '../../../src/core/recommend/recommend.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import { insertRecord, jointDocument, resolved } from '../../support/joints.ts';

vi.setConfig({ testTimeout: 30_000 });

const DRAWER: readonly InsertRecord[] = [
  insertRecord({ id: 'five' }),
  insertRecord({ id: 'short', length_mm: [3.9], label: 'from the tin' }),
  insertRecord({ id: 'long', length_mm: [9.8] }),
  insertRecord({
    id: 'four',
    thread: 'M4',
    knurlDiameter_mm: [5.9],
    pilotDiameter_mm: [5.2],
    length_mm: [6.1],
  }),
];

function show(drawer: readonly InsertRecord[] = DRAWER, chosen = 'five') {
  const { joint, drawer: inserts } = resolved(jointDocument({ drawer }));
  const recommendation = recommend(joint, inserts);
  if (recommendation.kind === 'stopped') throw new Error('the joint is stopped');
  const onChoose = vi.fn<(id: string) => void>();
  render(
    <DerivationsProvider>
      <WhichInsert
        joint={joint}
        drawer={inserts}
        recommendation={recommendation}
        chosenInsertId={chosen}
        onChoose={onChoose}
      />
    </DerivationsProvider>,
  );
  return { recommendation, onChoose, table: screen.getByRole('table', { name: /ranked for this joint/ }) };
}

describe('WhichInsert', () => {
  test('ranks what fits and gives the reason of what is out in full', () => {
    const { table, recommendation } = show();
    expect(recommendation.ranked.length).toBe(2);
    const out = within(table).getByRole('row', { name: /M4/ });
    expect(within(out).getByText('out')).toBeInTheDocument();
    expect(within(out).getByText('M4 thread; the joint’s screw is M3.')).toBeInTheDocument();
    expect(out.querySelector('s')).toHaveTextContent('M4 5.9 × 6.1');
    const thin = within(table).getByRole('row', { name: /× 9\.8/ });
    expect(within(thin).getByText(/^Needs a hole of/)).toBeInTheDocument();
  });
  test('the numbers of a reason to be out open below its row', async () => {
    const { table } = show();
    const thin = within(table).getByRole('row', { name: /× 9\.8/ });
    const depth = within(thin).getByRole('button', { name: /^Hole that the insert needs, / });
    await userEvent.click(depth);
    expect(within(table).getByRole('region', { name: /^Derivation: Hole that/ })).toHaveTextContent(
      `hole depth = ${depth.textContent.replace('\u00a0', ' ')}`,
    );
  });
  test('every figure of a ranked insert opens its derivation below its row', async () => {
    const { table, recommendation } = show();
    const [best] = recommendation.ranked;
    const row = within(table).getByRole('row', { name: new RegExp(`^${best?.rank} M3`) });
    expect(within(row).getAllByRole('button', { name: /open derivation/ })).toHaveLength(5);
    expect(
      within(row).getByRole('button', { name: /^What is held over what is asked, .*×/ }),
    ).toBeInTheDocument();
    await userEvent.click(within(row).getByRole('button', { name: /^Pull-out holds/ }));
    const region = within(table).getByRole('region');
    expect(region.closest('tr')?.previousElementSibling).toBe(row);
  });
  test('another insert can be taken, one without answers cannot', async () => {
    const { table, onChoose } = show();
    expect(
      within(within(table).getByRole('row', { name: /× 5\.3/ })).getByText('shown on this sheet'),
    ).toBeInTheDocument();
    await userEvent.click(screen.getByRole('button', { name: 'use this one: M3 4.9 × 3.9' }));
    expect(onChoose.mock.calls).toEqual([['short']]);
    expect(screen.queryByRole('button', { name: /: M4/ })).toBeNull();
    expect(within(table).getByText('from the tin')).toBeInTheDocument();
  });
  test('says so when nothing fits', () => {
    const { table } = show([insertRecord({ id: 'long', length_mm: [9.8] })], 'long');
    expect(within(table).getByText('No insert of the drawer fits this joint')).toBeInTheDocument();
  });
  test('shows a large drawer in part, the chosen one always, and the rest on request', async () => {
    const many = Array.from({ length: 30 }, (_, index) =>
      insertRecord({ id: `n${index}`, length_mm: [4 + 0.05 * index] }),
    );
    const { recommendation, table } = show(many, 'n0');
    // The table of the charts comes later and has headers of its own.
    const names = () => within(table).getAllByRole('rowheader').length;
    const before = names();
    expect(before).toBeLessThan(30);
    expect(screen.getByText('shown on this sheet')).toBeInTheDocument();
    await userEvent.click(screen.getByRole('button', { name: /^Show the other/ }));
    expect(names()).toBe(recommendation.ranked.length + recommendation.rejected.length);
    expect(screen.queryByRole('button', { name: /^Show the other/ })).toBeNull();
  });
});
