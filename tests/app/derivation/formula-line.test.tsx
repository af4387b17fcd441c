// @vitest-environment jsdom
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { FormulaLine } from '../../../src/app/derivation/formula-line.tsx';

/** Gives every element these widths, px; the page of a test has none of its own. */
function giveWidths({ content, place }: { readonly content: number; readonly place: number }): void {
  vi.spyOn(Element.prototype, 'scrollWidth', 'get').mockReturnValue(content);
  vi.spyOn(Element.prototype, 'clientWidth', 'get').mockReturnValue(place);
}

describe('FormulaLine', () => {
  test('takes the focus under its name where it is wider than its place', async () => {
    giveWidths({ content: 412, place: 331 });
    render(
      <FormulaLine label="Formula" className={undefined}>
        a = b + c
      </FormulaLine>,
    );
    await userEvent.tab();
    const line = screen.getByRole('group', { name: 'Formula' });
    expect(line).toHaveFocus();
    expect(line).toHaveTextContent('a = b + c');
    vi.restoreAllMocks();
  });

  test('is no stop of the keyboard where it has room', async () => {
    giveWidths({ content: 298, place: 331 });
    render(
      <FormulaLine label="Formula" className={undefined}>
        d = e − f
      </FormulaLine>,
    );
    await userEvent.tab();
    expect(document.body).toHaveFocus();
    expect(screen.queryByRole('group')).not.toBeInTheDocument();
    vi.restoreAllMocks();
  });
});
