// @vitest-environment jsdom
import { act, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { Late } from '../../../src/app/shell/late.tsx';
import { useFindings, useSheetActions } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';

/** The page moves: tells whether the part is in reach of the window. */
let tell: (isNear: boolean) => void = () => {};

class Observer {
  constructor(told: IntersectionObserverCallback) {
    const entry = (isIntersecting: boolean) => ({ isIntersecting }) as IntersectionObserverEntry;
    tell = (isNear) => act(() => told([entry(isNear)], this as unknown as IntersectionObserver));
  }
  observe(): void {}
  disconnect(): void {}
}

beforeEach(() => {
  vi.stubGlobal('IntersectionObserver', Observer);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function Skin({ place }: { readonly place: string }) {
  const { joint } = useFindings();
  return <p>{`${place}: ${joint.host.topSkin} mm`}</p>;
}

function ThickerSkin() {
  const { edit } = useSheetActions();
  return (
    <button type="button" onClick={() => edit('skin', { path: 'joint.host.topSkin_mm', value: 1.6 })}>
      thicker
    </button>
  );
}

function renderSheet() {
  render(
    <SheetProvider first={SENSOR_LID}>
      <ThickerSkin />
      <Skin place="drawing" />
      <Late>
        <Skin place="late" />
      </Late>
    </SheetProvider>,
  );
}

const edited = () => act(() => screen.getByRole('button', { name: 'thicker' }).click());

describe('a part that follows later', () => {
  test('follows at once while it is in reach of the window', () => {
    renderSheet();
    tell(true);
    edited();
    expect(screen.getByText('drawing: 1.6 mm')).toBeVisible();
    expect(screen.getByText('late: 1.6 mm')).toBeVisible();
  });

  test('out of reach it keeps what it showed, busy, until the page is idle', async () => {
    renderSheet();
    tell(false);
    const before = screen.getByText(/^late/).textContent;
    edited();
    expect(screen.getByText('drawing: 1.6 mm')).toBeVisible();
    expect(screen.getByText(/^late/)).toHaveTextContent(before);
    expect(screen.getByText(/^late/).parentElement).toHaveAttribute('aria-busy', 'true');
    await act(() => vi.advanceTimersByTimeAsync(3000));
    expect(screen.getByText('late: 1.6 mm').parentElement).not.toHaveAttribute('aria-busy');
  });

  test('coming into reach it follows before the page is idle', () => {
    renderSheet();
    tell(false);
    edited();
    tell(true);
    expect(screen.getByText('late: 1.6 mm')).toBeVisible();
  });
});
