// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { ReadingsField } from '../../../src/app/fields/readings-field.tsx';
import { KNURL } from '../quantity/fields-of-tests.ts';

afterEach(cleanup);

// Typing key by key is slow on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

function Held({ onTake }: { readonly onTake: (readings: readonly number[]) => void }) {
  const [readings, setReadings] = useState<readonly number[]>([4.24, 4.3]);
  const take = (taken: readonly number[]) => {
    setReadings(taken);
    onTake(taken);
  };
  return (
    <ReadingsField
      label="Pilot"
      definition={KNURL}
      readings={readings}
      onTake={take}
      least={2}
      noun="A pilot"
    />
  );
}

function setUp() {
  const onTake = vi.fn<(readings: readonly number[]) => void>();
  render(<Held onTake={onTake} />);
  return { onTake, field: screen.getByLabelText('Pilot'), user: userEvent.setup() };
}

describe('ReadingsField', () => {
  test('writes the readings with semicolons between', () => {
    expect(setUp().field).toHaveProperty('value', '4.24; 4.30');
  });

  test('takes readings with decimal commas on Enter and leaves them as typed', async () => {
    const { onTake, field, user } = setUp();
    await user.clear(field);
    await user.type(field, '4,24; 4,26 4,25{Enter}');
    expect(onTake.mock.calls).toEqual([[[4.24, 4.26, 4.25]]]);
    expect(field).toHaveProperty('value', '4,24; 4,26 4,25');
  });

  test('takes a pasted column and converts readings in inches', async () => {
    const { onTake, field, user } = setUp();
    await user.clear(field);
    await user.click(field);
    await user.paste('4.24\n0.25 in');
    await user.tab();
    expect(onTake.mock.calls).toEqual([[[4.24, 6.35]]]);
    expect(field).toHaveProperty('value', '4.24; 6.35');
  });

  test('names the bad reading and keeps the good ones as the meant ones', async () => {
    const { onTake, field, user } = setUp();
    await user.clear(field);
    await user.type(field, '4.24 42.5');
    await user.tab();
    const alert = screen.getByRole('alert').textContent.replaceAll('\u00a0', ' ');
    expect(alert).toMatch(/^Not taken\. Reading 2, “42\.5”: A pilot must be at most 26\.00 mm;/);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(onTake.mock.calls).toEqual([]);
    await user.click(field);
    await user.keyboard('{Escape}');
    expect(field).toHaveProperty('value', '4.24; 4.30');
  });
});
