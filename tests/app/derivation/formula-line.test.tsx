// @vitest-environment jsdom
import { act, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { FormulaLine } from '../../../src/app/derivation/formula-line.tsx';

/** Gives every element these widths, px; the page of a test has none of its own. */
function giveWidths({ content, place }: { readonly content: number; readonly place: number }): void {
  vi.spyOn(Element.prototype, 'scrollWidth', 'get').mockReturnValue(content);
  vi.spyOn(Element.prototype, 'clientWidth', 'get').mockReturnValue(place);
}

/** Tells of each watched element once, as a browser does at the first layout. */
class FirstLayout implements ResizeObserver {
  readonly #tell: ResizeObserverCallback;
  constructor(tell: ResizeObserverCallback) {
    this.#tell = tell;
  }
  observe(): void {
    queueMicrotask(() => act(() => this.#tell([], this)));
  }
  unobserve(): void {}
  disconnect(): void {}
}

beforeEach(() => vi.stubGlobal('ResizeObserver', FirstLayout));
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

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
  });
});
