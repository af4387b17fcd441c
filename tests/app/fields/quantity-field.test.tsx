// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { QuantityFieldProps } from '../../../src/app/fields/field-props.ts';
import { QuantityField } from '../../../src/app/fields/quantity-field.tsx';
import { DURATION, KNURL, LID, PULL } from '../quantity/fields-of-tests.ts';

afterEach(cleanup);

// Typing key by key is slow on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

/** Loading the engine in a busy test run, ms. */
const ENGINE_PATIENCE = 20_000;

type HeldProps = Partial<QuantityFieldProps> & { readonly start?: number | null };

/** A field whose value is held as the program holds it: what is taken comes back as the value. */
function Held({ start = 4.25, onTake, ...props }: HeldProps) {
  const [value, setValue] = useState(start);
  const take: QuantityFieldProps['onTake'] = (taken, how) => {
    setValue(taken);
    onTake?.(taken, how);
  };
  return (
    <>
      <QuantityField label="Knurl" definition={KNURL} value={value} {...props} onTake={take} />
      <button type="button" onClick={() => setValue(7.7)}>
        outside
      </button>
    </>
  );
}

function setUp(props: HeldProps = {}) {
  const onTake = vi.fn<QuantityFieldProps['onTake']>();
  render(<Held onTake={onTake} {...props} />);
  const field = screen.getByRole('textbox');
  const user = userEvent.setup();
  const type = async (text: string, then = '{Tab}') => {
    await user.clear(field);
    if (text !== '') await user.type(field, text);
    if (then === '{Tab}') await user.tab();
    else if (then !== '') await user.keyboard(then);
  };
  return { onTake, field, user, type, values: () => onTake.mock.calls.map(([value]) => value) };
}

const messageText = () => screen.getByRole('alert').textContent.replaceAll('\u00a0', ' ');

describe('QuantityField, taking', () => {
  test('shows the value with the decimals of its step and its unit, under its label', () => {
    const { field } = setUp();
    expect(screen.getByLabelText('Knurl')).toBe(field);
    expect(field).toHaveProperty('value', '4.25');
    expect(screen.getByText('mm')).toBeTruthy();
  });

  test('takes on leaving, not while typing', async () => {
    const { values, user, type, field } = setUp();
    await type('5.1', '');
    expect(values()).toEqual([]);
    await user.tab();
    expect(values()).toEqual([5.1]);
    expect(field).toHaveProperty('value', '5.1');
  });

  test('takes on Enter, and not once more on leaving', async () => {
    const { values, user, type } = setUp();
    await type('5.1', '{Enter}');
    expect(values()).toEqual([5.1]);
    await user.tab();
    expect(values()).toEqual([5.1]);
  });

  test('keeps a decimal comma as it was typed, and digits beyond the step', async () => {
    const { values, type, field } = setUp();
    await type('5,1237');
    expect(values()).toEqual([5.1237]);
    expect(field).toHaveProperty('value', '5,1237');
  });

  test('converts another unit on leaving and tells which one was typed', async () => {
    const { onTake, type, field } = setUp();
    await type('0.25 in');
    expect(onTake.mock.calls[0]?.[0]).toBe(6.35);
    expect(onTake.mock.calls[0]?.[1]).toMatchObject({ typedUnit: 'in', unitWasTyped: true });
    expect(field).toHaveProperty('value', '6.35');
  });

  test(
    'works out an expression, though the engine has first to be fetched',
    async () => {
      const { values, type, field } = setUp();
      await type('4.25 + 0.5');
      await waitFor(() => expect(values()).toEqual([4.75]), { timeout: ENGINE_PATIENCE });
      expect(field).toHaveProperty('value', '4.75');
    },
    2 * ENGINE_PATIENCE,
  );

  test('takes nothing where nothing was changed', async () => {
    const { values, user, field, type } = setUp({ start: 4.59740001234 });
    await user.click(field);
    await user.tab();
    await type('4.5974');
    expect(values()).toEqual([]);
  });

  test('follows a value that changes outside', async () => {
    const { field, user, values } = setUp();
    await user.click(screen.getByText('outside'));
    expect(field).toHaveProperty('value', '7.70');
    expect(values()).toEqual([]);
  });

  test('writes the unit in the plural where it is a word', async () => {
    const { type } = setUp({ definition: DURATION, start: 8760 });
    expect(screen.getByText('year')).toBeTruthy();
    await type('3');
    expect(screen.getByText('years')).toBeTruthy();
  });
});

describe('QuantityField, not taking', () => {
  test('says why, marks the field, and leaves the text and the value alone', async () => {
    const { values, type, field } = setUp({ definition: PULL, start: 180, noun: 'A pull' });
    await type('180 mm');
    expect(messageText()).toBe('Not taken. A pull is a force; mm is a length. Type it as 180 N or 18 kgf.');
    expect(field).toHaveProperty('value', '180 mm');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(values()).toEqual([]);
  });

  test('ties the message and the allowed range to the field', async () => {
    const { type, field } = setUp({ note: 'Thinner ones tear.' });
    const described = () =>
      (field.getAttribute('aria-describedby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent);
    expect(described()).toEqual([
      'At least 2.40\u00a0mm, at most 26.00\u00a0mm. Arrow keys step by 0.05\u00a0mm. Thinner ones tear.',
    ]);
    expect(field.hasAttribute('aria-invalid')).toBe(false);
    await type('27');
    expect(described()).toHaveLength(2);
    expect(described()[0]).toMatch(/^Not taken\. /);
  });

  test('never clamps: the limit is told, the typed text stays', async () => {
    const { values, type, field } = setUp({ definition: LID, start: 3, label: 'Lid' });
    await type('31.04');
    expect(messageText()).toBe('Not taken. This value must be at most 31.0 mm; 31.04 mm is not.');
    expect(field).toHaveProperty('value', '31.04');
    expect(values()).toEqual([]);
  });

  test('repairs with one press and gives the focus back', async () => {
    const { values, type, field, user } = setUp();
    await type('0.181');
    await user.click(screen.getByRole('button', { name: 'Take 0.181 in' }));
    expect(values()).toEqual([0.181 * 25.4]);
    expect(field).toHaveProperty('value', '4.5974');
    expect(screen.queryByRole('alert')).toBeNull();
    expect(field.hasAttribute('aria-invalid')).toBe(false);
    expect(document.activeElement).toBe(field);
  });

  test('asks about 1,250 and takes the reading that is pressed', async () => {
    const { values, type, user } = setUp({ definition: PULL, start: 180 });
    await type('1,250');
    expect(screen.getAllByRole('button', { name: /^Take/ })).toHaveLength(2);
    await user.click(screen.getByRole('button', { name: 'Take 1250' }));
    expect(values()).toEqual([1250]);
  });

  test('keeps the message while the text is mended, until it is read again', async () => {
    const { type, values, user } = setUp();
    await type('27');
    await type('26', '');
    expect(messageText()).toMatch(/27\.00 mm is not/);
    await user.keyboard('{Enter}');
    expect(screen.queryByRole('alert')).toBeNull();
    expect(values()).toEqual([26]);
  });

  test('tells the outside while an error shows', async () => {
    const onRefused = vi.fn<(refused: boolean) => void>();
    const { type } = setUp({ onRefused });
    expect(onRefused.mock.calls).toEqual([]);
    await type('thick');
    expect(onRefused.mock.calls).toEqual([[true]]);
    await type('5');
    expect(onRefused.mock.calls).toEqual([[true], [false]]);
  });

  test('tells the outside that an error is gone when the field itself goes', async () => {
    const onRefused = vi.fn<(refused: boolean) => void>();
    const { type } = setUp({ onRefused });
    await type('thick');
    cleanup();
    expect(onRefused.mock.calls).toEqual([[true], [false]]);
  });

  test('is emptied only where "not known" is an answer', async () => {
    const { type } = setUp();
    await type('');
    expect(messageText()).toMatch(/^Not taken\. The field is empty\./);
    cleanup();
    const onClear = vi.fn<() => void>();
    const optional = setUp({ onClear });
    await optional.type('');
    expect(onClear.mock.calls).toEqual([[]]);
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('QuantityField, keys', () => {
  test('Escape brings back the last taken text, also out of an error', async () => {
    const { type, field, user, values } = setUp();
    await type('5,1', '{Enter}');
    await type('9.99', '{Escape}');
    expect(field).toHaveProperty('value', '5,1');
    await type('thick', '{Enter}');
    await user.keyboard('{Escape}');
    expect(field).toHaveProperty('value', '5,1');
    expect(screen.queryByRole('alert')).toBeNull();
    await user.tab();
    expect(values()).toEqual([5.1]);
  });

  test('arrows step by the step of the field, page keys by ten', async () => {
    const { user, field, values } = setUp();
    await user.click(field);
    await user.keyboard('{ArrowUp}{ArrowUp}{ArrowDown}{PageUp}{PageDown}');
    expect(values()).toEqual([4.3, 4.35, 4.3, 4.8, 4.3]);
    expect(field).toHaveProperty('value', '4.30');
  });

  test('arrows stop at the limit without an error', async () => {
    const { user, field, values } = setUp({ start: 25.97 });
    await user.click(field);
    await user.keyboard('{ArrowUp}');
    expect(values()).toEqual([]);
    expect(field).toHaveProperty('value', '25.97');
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('QuantityField, problems of the joint', () => {
  const message = 'A knurl of 4.1 is thinner than the pilot of 4.25. Are the two swapped?';

  test('shows what the joint objects to, with its repair', async () => {
    const apply = vi.fn<() => void>();
    const { user, field } = setUp({ problem: { message, repair: { label: 'Swap them', apply } } });
    expect(messageText()).toBe(`Not taken. ${message}Swap them`);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    await user.click(screen.getByRole('button', { name: 'Swap them' }));
    expect(apply.mock.calls).toEqual([[]]);
  });

  test('says what is wrong with the text before what is wrong with the joint', async () => {
    const { type } = setUp({ problem: { message } });
    await type('thick');
    expect(messageText()).toMatch(/no number/);
  });

  test('Escape goes back to the value before, even if the outside never took the last one', async () => {
    const onTake = vi.fn<QuantityFieldProps['onTake']>();
    const user = userEvent.setup();
    const props = { label: 'Knurl', definition: KNURL, value: 5, onTake };
    const { rerender } = render(<QuantityField {...props} />);
    const field = screen.getByRole('textbox');
    await user.clear(field);
    await user.type(field, '4.1{Enter}');
    rerender(<QuantityField {...props} problem={{ message }} />);
    expect(field).toHaveProperty('value', '4.1');
    await user.keyboard('{Escape}');
    expect(field).toHaveProperty('value', '5.00');
    expect(onTake.mock.calls.map(([value]) => value)).toEqual([4.1, 5]);
  });
});

describe('QuantityField, bare', () => {
  test('has its name and unit for those who do not see the drawing', () => {
    setUp({ layout: 'bare' });
    expect(screen.getByRole('textbox', { name: 'Knurl, mm' })).toHaveProperty('inputMode', 'decimal');
    expect(screen.queryByText('Knurl')).toBeNull();
  });
});
