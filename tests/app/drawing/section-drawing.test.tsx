// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { describeSection } from '../../../src/app/drawing/describe-section.ts';
import { SectionDrawing } from '../../../src/app/drawing/section-drawing.tsx';
import { section } from './section-inputs.ts';

const placeOf = (container: HTMLElement, id: string) =>
  container.querySelector<HTMLElement>(`[data-dimension="${id}"]`);

describe('SectionDrawing', () => {
  test('is one picture that says the section in words', () => {
    render(<SectionDrawing input={section()} variant="wide" />);
    expect(screen.getByRole('img', { name: describeSection(section()) })).toBeVisible();
    expect(screen.getAllByRole('img')).toHaveLength(1);
  });

  test('shows the plain number with its small name where no control is given', () => {
    const { container } = render(<SectionDrawing input={section()} variant="wide" />);
    expect(placeOf(container, 'clamped-thickness')).toHaveTextContent(/^lid2\.7$/);
    expect(placeOf(container, 'bore-drawn')).toHaveTextContent(/^draw⌀ 4\.55$/);
    expect(placeOf(container, 'boss-least')).toHaveTextContent(/^boss at least⌀ 9\.1$/);
  });

  test('puts a control in the place of the number', () => {
    const controls = {
      'clamped-thickness': <input aria-label="Lid" defaultValue="2.7" />,
      infill: <input aria-label="Infill" defaultValue="23" />,
    };
    const { container } = render(<SectionDrawing input={section()} variant="wide" controls={controls} />);
    const lid = placeOf(container, 'clamped-thickness');
    expect(within(lid ?? document.body).getByRole('textbox', { name: 'Lid' })).toHaveValue('2.7');
    expect(lid).toHaveTextContent(/^lid$/);
    const note = container.querySelector<HTMLElement>('[data-note="infill"]');
    expect(within(note ?? document.body).getByRole('textbox', { name: 'Infill' })).toHaveValue('23');
  });

  test('reads its fields from top to bottom, whatever order they are given in', () => {
    const field = (name: string) => <input aria-label={name} />;
    const controls = {
      floor: field('floor'),
      'insert-length': field('insert'),
      'clamped-thickness': field('lid'),
    };
    render(<SectionDrawing input={section()} variant="wide" controls={controls} />);
    const names = screen.getAllByRole('textbox').map((box) => box.getAttribute('aria-label'));
    expect(names).toEqual(['lid', 'insert', 'floor']);
  });

  test('places its values at per cent positions of the figure', () => {
    const { container } = render(<SectionDrawing input={section()} variant="wide" />);
    const { left, top } = placeOf(container, 'bore-drawn')?.style ?? { left: '', top: '' };
    expect(left).toMatch(/^\d+\.\d+%$/);
    expect(top).toMatch(/^\d+\.\d+%$/);
    expect(Math.abs(Number.parseFloat(left) - (475 / 900) * 100)).toBeLessThan(1e-3);
  });

  test('has letters and a list beneath in place of notes in the narrow drawing', () => {
    const { container } = render(<SectionDrawing input={section()} variant="narrow" />);
    const letters = [...container.querySelectorAll('svg text')].map(({ textContent }) => textContent);
    expect(letters).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g']);
    const items = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(items[0]).toBe('aScrew M3 × 8, ISO 4762, class 8.8');
    expect(items).toContain('cLid seats on brass, clamp force stays in metal');
    expect(items.at(-1)).toBe('Hole, as printed ⌀ 4.26');
  });

  test('lets a note have a second line of its own', () => {
    render(
      <SectionDrawing input={section()} variant="wide" details={{ seat: 'as found from the geometry' }} />,
    );
    expect(screen.getByText('as found from the geometry')).toBeVisible();
    expect(screen.queryByText('clamp force stays in metal')).toBeNull();
  });

  test('says that no length fits when the screw is refused, and dashes its outline', () => {
    const refused = section({ screw: { state: 'refused' } });
    const { container, rerender } = render(<SectionDrawing input={refused} variant="wide" />);
    const dashed = container.querySelectorAll('[class*="refused"]').length;
    expect(screen.getByText('no length fits; the least is drawn')).toBeVisible();
    expect(dashed).toBe(3);
    rerender(<SectionDrawing input={section()} variant="wide" />);
    expect(container.querySelectorAll('[class*="refused"]')).toHaveLength(0);
  });

  test('hatches a metal lid and builds a printed one from walls and infill', () => {
    const { container, rerender } = render(<SectionDrawing input={section()} variant="wide" />);
    const hatched = () => container.querySelectorAll('path[fill$="lid)"]').length;
    expect(hatched()).toBe(1);
    rerender(<SectionDrawing input={section({ clamped: { kind: 'printed' } })} variant="wide" />);
    expect(hatched()).toBe(0);
  });

  test('cuts a metal spacer through a printed lid', () => {
    const sleeve = { outsideDiameter: 5.6, name: 'Steel S235' };
    const { container } = render(
      <SectionDrawing input={section({ clamped: { kind: 'printed', sleeve } })} variant="wide" />,
    );
    expect(container.querySelectorAll('path[fill$="lid)"]')).toHaveLength(1);
    expect(screen.getByText('Spacer ⌀ 5.6')).toBeVisible();
    expect(screen.getByText('Spacer seats on brass')).toBeVisible();
    expect(screen.getByRole('img').getAttribute('aria-label')).toContain(
      'in a spacer of 5.6 mm of steel S235',
    );
  });

  test.each([
    [{ pull: true, shear: false }, ['pull']],
    [{ pull: false, shear: true }, ['across']],
    [{ pull: true, shear: true }, ['pull', 'across']],
    [{ pull: false, shear: false }, []],
  ])('draws an arrow for each load of %o', (loads, names) => {
    const { container } = render(<SectionDrawing input={section({ loads })} variant="wide" />);
    expect([...container.querySelectorAll('svg text')].map(({ textContent }) => textContent)).toEqual(names);
  });

  test('notes the skin only when it has a control', () => {
    const { rerender } = render(<SectionDrawing input={section()} variant="wide" />);
    expect(screen.queryByRole('spinbutton')).toBeNull();
    rerender(
      <SectionDrawing
        input={section()}
        variant="wide"
        controls={{ 'top-skin': <input type="number" aria-label="Skin" /> }}
      />,
    );
    expect(screen.getByRole('spinbutton', { name: 'Skin' })).toBeVisible();
  });
});
