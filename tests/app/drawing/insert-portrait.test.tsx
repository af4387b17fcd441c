// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { InsertPortrait } from '../../../src/app/drawing/insert-portrait.tsx';
import { InsertSilhouette, silhouetteScale } from '../../../src/app/drawing/insert-silhouette.tsx';
import { extent } from '../../../src/app/drawing/points.ts';
import { portraitLayout } from '../../../src/app/drawing/portrait-layout.ts';

const insert = {
  nominalDiameter: 3,
  minorDiameter: 2.4,
  knurlDiameter: 4.93,
  pilotDiameter: 4.21,
  length: 5.3,
  knurledLength: 3.92,
};

describe('portraitLayout', () => {
  test.each([
    ['short', 3.1],
    ['usual', 5.3],
    ['long', 19.7],
  ])('draws a %s insert to one scale in both directions', (_, length) => {
    const { scale, cut, seen } = portraitLayout({ ...insert, length, knurledLength: 0.7 * length });
    const { left, right, top, bottom } = extent([...cut, ...seen]);
    expect(Math.abs(right - left - insert.knurlDiameter * scale)).toBeLessThan(1e-9);
    expect(Math.abs(bottom - top - length * scale)).toBeLessThan(1e-9);
  });

  test.each([3.1, 5.3, 19.7])('keeps its four values inside the figure and apart, length %f', (length) => {
    const { width, height, values } = portraitLayout({ ...insert, length, knurledLength: 0.7 * length });
    const places = Object.values(values);
    for (const { x, y } of places) {
      expect(x).toBeGreaterThan(40);
      expect(x).toBeLessThan(width - 40);
      expect(y).toBeGreaterThan(10);
      expect(y).toBeLessThan(height - 10);
    }
    const distances = places.flatMap((one, index) =>
      places.slice(index + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y)),
    );
    expect(Math.min(...distances)).toBeGreaterThan(60);
  });
});

describe('InsertPortrait', () => {
  test('says the four sizes', () => {
    render(<InsertPortrait insert={insert} />);
    const name =
      'The insert, half in section; knurl diameter 4.93, length 5.3, knurled 3.92, pilot diameter 4.21 mm.';
    expect(screen.getByRole('img', { name })).toBeVisible();
  });

  test('puts controls in the places of the sizes and shows the rest as numbers', () => {
    const controls = { 'pilot-diameter': <input aria-label="Pilot" /> };
    const { container } = render(
      <InsertPortrait insert={insert} controls={controls} knurledLengthRemark="≈ estimate" />,
    );
    const pilot = container.querySelector<HTMLElement>('[data-dimension="pilot-diameter"]');
    expect(within(pilot ?? document.body).getByRole('textbox', { name: 'Pilot' })).toBeVisible();
    expect(pilot).toHaveTextContent(/^pilot ⌀$/);
    const knurled = container.querySelector('[data-dimension="knurled-length"]');
    expect(knurled).toHaveTextContent('knurled3.92≈ estimate');
  });
});

describe('InsertSilhouette', () => {
  const heightOf = (length: number, largestDiameter: number) => {
    const { container } = render(
      <InsertSilhouette insert={{ ...insert, length }} largestDiameter={largestDiameter} />,
    );
    return Number(container.querySelector('svg')?.getAttribute('height'));
  };

  test('shares one scale in a table', () => {
    const difference = heightOf(7.9, 9.4) - heightOf(5.3, 9.4);
    expect(Math.abs(difference - 2.6 * silhouetteScale(9.4))).toBeLessThan(1e-9);
  });

  test('is hidden from a screen reader', () => {
    const { container } = render(<InsertSilhouette insert={insert} largestDiameter={5} />);
    expect(container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
    expect(screen.queryByRole('img')).toBeNull();
  });
});
