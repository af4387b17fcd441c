// @vitest-environment jsdom
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { DerivationRow, DerivationSlot } from '../../../src/app/derivation/derivation-slot.tsx';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { Told } from '../../../src/app/derivation/told.tsx';
import { type Derived, entry } from '../../../src/core/sources/derived.ts';
import { figure, said } from '../../../src/wording/sentence.ts';

const LOSS: Derived = {
  symbol: 'Δ_0',
  value: 0.38,
  unit: 'mm',
  formula: '2 · c_0',
  entries: [entry('c_0', 0.19, 'mm')],
  source: 'slicer-settings-note',
  standing: 'estimate',
};

describe('a sentence on the page', () => {
  test('reads as it is written, and its number opens in the slot of its row', async () => {
    render(
      <DerivationsProvider>
        <DerivationRow slot="mouth">
          <p>
            <Told sentence={said`It takes ${figure(LOSS, '0.38 mm', 'Loss')} away.`} of="Hole 3" />
          </p>
          <DerivationSlot name="mouth" />
        </DerivationRow>
      </DerivationsProvider>,
    );
    expect(screen.getByText(/^It takes/).textContent).toBe('It takes 0.38 mm away.');
    await userEvent.click(screen.getByRole('button', { name: 'Hole 3, Loss, 0.38 mm, open derivation' }));
    expect(screen.getByRole('region', { name: 'Derivation: Hole 3, Loss, 0.38 mm' })).toBeInTheDocument();
  });
  test('names a number by the meaning of its symbol where the sentence has no name for it', () => {
    render(
      <DerivationsProvider>
        <Told sentence={said`It takes ${figure(LOSS, '0.38 mm')} away.`} />
      </DerivationsProvider>,
    );
    const name = 'What the flare takes from the diameter of a mouth on the bed, 0.38 mm, open derivation';
    expect(screen.getByRole('button', { name })).toBeInTheDocument();
  });
});
