// @vitest-environment jsdom
import { act, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { LateFigure } from '../../../src/app/charts/late-figure.tsx';

interface Content {
  readonly load: number;
}

let tell: (isNear: boolean) => void = () => undefined;

/** A window that says itself what is near. */
class Observer {
  constructor(told: IntersectionObserverCallback) {
    const entry = (isIntersecting: boolean) => ({ isIntersecting }) as IntersectionObserverEntry;
    tell = (isNear) => act(() => told([entry(isNear)], this as unknown as IntersectionObserver));
  }
  observe() {}
  disconnect() {}
}

const drawn = vi.fn<(load: number) => void>();

function Drawing({ load }: Content) {
  drawn(load);
  return (
    <>
      <p>pull {load}</p>
      <details>
        <summary>As a table</summary>
      </details>
    </>
  );
}

const figure = () => screen.getByRole('figure');

function shown() {
  const first: Content = { load: 130 };
  const { rerender } = render(<LateFigure content={first} drawing={Drawing} />);
  return (load: number) => rerender(<LateFigure content={{ load }} drawing={Drawing} />);
}

beforeEach(() => {
  vi.stubGlobal('IntersectionObserver', Observer);
  drawn.mockClear();
});
afterEach(() => vi.unstubAllGlobals());

describe('LateFigure', () => {
  test('draws the first content wherever it stands', () => {
    shown();
    expect(figure()).toHaveTextContent('pull 130');
    expect(figure()).not.toHaveAttribute('data-stale');
  });
  test('follows while it is in reach', () => {
    const change = shown();
    tell(true);
    change(145);
    expect(figure()).toHaveTextContent('pull 145');
    expect(figure()).not.toHaveAttribute('data-stale');
    expect(figure()).not.toHaveAttribute('aria-busy');
  });
  test('keeps its drawing out of reach, marked as stale, and draws when somebody comes near', () => {
    const change = shown();
    tell(false);
    change(145);
    expect(figure()).toHaveTextContent('pull 130');
    expect(figure()).toHaveAttribute('data-stale');
    expect(figure()).toHaveAttribute('aria-busy', 'true');
    expect(drawn).not.toHaveBeenCalledWith(145);
    tell(true);
    expect(figure()).toHaveTextContent('pull 145');
    expect(figure()).not.toHaveAttribute('data-stale');
  });
  test('draws out of reach before the page is printed', () => {
    const change = shown();
    tell(false);
    change(145);
    act(() => void window.dispatchEvent(new Event('beforeprint')));
    expect(figure()).toHaveTextContent('pull 145');
  });
  test('follows out of reach while its table stands open', () => {
    const change = shown();
    tell(false);
    const details = figure().querySelector('details');
    if (details === null) throw new Error('no table');
    act(() => {
      details.open = true;
      details.dispatchEvent(new Event('toggle'));
    });
    change(145);
    expect(figure()).toHaveTextContent('pull 145');
  });
});
