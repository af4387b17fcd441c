// @vitest-environment jsdom
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { ChoiceField } from '../../../src/app/fields/choice-field.tsx';

afterEach(cleanup);

const choices = [
  { value: 'along', label: 'along the build' },
  { value: 'across', label: 'across the layers' },
] as const;

describe('ChoiceField', () => {
  test('shows the chosen label and takes another', async () => {
    const onTake = vi.fn<(axis: string) => void>();
    render(<ChoiceField label="Insert axis" value="along" choices={choices} onTake={onTake} />);
    const field = screen.getByRole('combobox', { name: 'Insert axis' });
    expect(field).toHaveProperty('value', 'along');
    await userEvent.setup().selectOptions(field, 'across the layers');
    expect(onTake.mock.calls).toEqual([['across']]);
  });

  test('keeps options of one group together', () => {
    const grouped = [
      { value: 'petg', label: 'PETG', group: 'Unfilled' },
      { value: 'petg-cf', label: 'PETG with carbon', group: 'Filled' },
      { value: 'pla', label: 'PLA', group: 'Unfilled' },
    ];
    render(
      <ChoiceField label="Printed in" value="pla" choices={grouped} onTake={() => undefined} layout="bare" />,
    );
    const unfilled = screen.getByRole('group', { name: 'Unfilled' });
    expect(
      within(unfilled)
        .getAllByRole('option')
        .map((option) => option.textContent),
    ).toEqual(['PETG', 'PLA']);
    expect(screen.getByRole('combobox', { name: 'Printed in' })).toHaveProperty('value', 'pla');
  });

  test('shows what the joint objects to', () => {
    render(
      <ChoiceField
        label="Axis"
        value="along"
        choices={choices}
        onTake={() => undefined}
        problem={{ message: 'No.' }}
      />,
    );
    expect(screen.getByRole('alert').textContent).toBe('Not taken. No.');
    expect(screen.getByRole('combobox').getAttribute('aria-invalid')).toBe('true');
  });
});
