// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { ComputedValue } from '../../../src/app/derivation/computed-value.tsx';
import { Derivation } from '../../../src/app/derivation/derivation.tsx';
import { DerivationRow, DerivationSlot } from '../../../src/app/derivation/derivation-slot.tsx';
import { DerivationStep } from '../../../src/app/derivation/derivation-step.tsx';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { type Derived, entry, entryFrom } from '../../../src/core/sources/derived.ts';

const PILOT: Derived = {
  symbol: 'D_p',
  value: 4.25,
  unit: 'mm',
  formula: 'Σx/n',
  entries: [entry('x_1', 4.24, 'mm'), entry('x_2', 4.26, 'mm'), entry('n', 2, '-')],
  source: 'jcgm-100',
  standing: 'measured',
};
const BORE: Derived = {
  symbol: 'D_t',
  value: 4.3,
  unit: 'mm',
  formula: 'D_p + f',
  entries: [entryFrom(PILOT), entry('f', 0.05, 'mm')],
  source: 'trade-practice',
  standing: 'common-practice',
};
const TORQUE: Derived = {
  symbol: 'T_least',
  value: 336,
  unit: 'N·mm',
  formula: 'F_req · k_high',
  entries: [entry('F_req', 350, 'N'), entry('k_high', 0.96, 'mm')],
  source: 'vdi-2230',
  standing: 'estimate',
};

function Page({ bore = BORE }: { readonly bore?: Derived }) {
  return (
    <DerivationsProvider>
      <table>
        <tbody>
          <DerivationRow slot="row">
            <tr>
              <td>
                <ComputedValue derived={bore} text={bore.value.toFixed(2)} label="Bore as printed, 4.30 mm" />
              </td>
              <td>
                <ComputedValue derived={TORQUE} text="0.34" label="Least torque, 0.34 N·m" />
              </td>
            </tr>
            <DerivationSlot name="row" columns={2} />
          </DerivationRow>
        </tbody>
      </table>
      <ComputedValue derived={PILOT} text="4.25" label="Pilot, 4.25 mm" slot="elsewhere" />
      <div data-testid="below">
        <DerivationSlot name="elsewhere" />
      </div>
    </DerivationsProvider>
  );
}

/** Text as it is read, without the places where a line may break. */
const plain = (element: HTMLElement) => element.textContent.replaceAll('\u200b', '');

const boreButton = () => screen.getByRole('button', { name: 'Bore as printed, 4.30 mm, open derivation' });

describe('ComputedValue', () => {
  test('opens its derivation in the row below, with the focus in it', async () => {
    render(<Page />);
    await userEvent.click(boreButton());
    const region = screen.getByRole('region', { name: 'Derivation: Bore as printed, 4.30 mm' });
    expect(region).toHaveFocus();
    expect(boreButton()).toHaveAttribute('aria-expanded', 'true');
    expect(boreButton()).toHaveAttribute('aria-controls', region.id);
    const row = region.closest('tr');
    expect(row?.previousElementSibling).toContainElement(boreButton());
  });
  test('Escape closes it and returns the focus', async () => {
    render(<Page />);
    await userEvent.click(boreButton());
    await userEvent.keyboard('{Escape}');
    expect(screen.queryByRole('region')).toBeNull();
    expect(boreButton()).toHaveFocus();
    expect(boreButton()).toHaveAttribute('aria-expanded', 'false');
  });
  test('a press of Close, or of the number again, closes it too', async () => {
    render(<Page />);
    await userEvent.click(boreButton());
    await userEvent.click(screen.getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('region')).toBeNull();
    expect(boreButton()).toHaveFocus();
    await userEvent.click(boreButton());
    await userEvent.click(boreButton());
    expect(screen.queryByRole('region')).toBeNull();
  });
  test('one derivation is open at a time', async () => {
    render(<Page />);
    await userEvent.click(boreButton());
    await userEvent.click(screen.getByRole('button', { name: /^Least torque/ }));
    expect(screen.getAllByRole('region')).toHaveLength(1);
    expect(screen.getByRole('region', { name: /Least torque/ })).toBeInTheDocument();
  });
  test('a slot named by the number itself goes before the row', async () => {
    render(<Page />);
    await userEvent.click(screen.getByRole('button', { name: /^Pilot/ }));
    expect(within(screen.getByTestId('below')).getByRole('region')).toBeInTheDocument();
  });
  test('what is open follows the joint', async () => {
    const { rerender } = render(<Page />);
    await userEvent.click(boreButton());
    rerender(<Page bore={{ ...BORE, value: 4.41 }} />);
    expect(within(screen.getByRole('region')).getByText('4.41 mm')).toBeInTheDocument();
  });
  test('one of many numbers is derived when it is opened, not before', async () => {
    const derive = vi.fn<() => typeof BORE>(() => BORE);
    render(
      <DerivationsProvider>
        <ComputedValue derived={derive} text="4.30" label="Bore as printed, 4.30 mm" />
      </DerivationsProvider>,
    );
    expect(derive).not.toHaveBeenCalled();
    await userEvent.click(boreButton());
    expect(plain(screen.getByRole('region', { name: /^Derivation/ }))).toContain('= 4.30\u00a0mm');
  });

  test('outside of the provider it is a mistake of the program', () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    expect(() => render(<ComputedValue derived={BORE} text="4.30" label="Bore" />)).toThrow(
      /DerivationsProvider/,
    );
    quiet.mockRestore();
  });
});

describe('Derivation', () => {
  test('shows formula, values, result with meaning, source and standing', () => {
    render(<Derivation label="bore" steps={[BORE]} />);
    const region = screen.getByRole('region', { name: 'Derivation: bore' });
    expect(within(region).getByLabelText('D_p + f')).toBeInTheDocument();
    expect(plain(region)).toContain('Dt = Dp+f');
    expect(plain(region)).toContain('= 4.25\u00a0mm+0.05\u00a0mm');
    expect(region.textContent).toContain('bore as printed = 4.30\u00a0mm');
    expect(region.textContent).toContain('fit over the pilot');
    expect(within(region).getByText(/common practice$/)).toBeInTheDocument();
    expect(within(region).getByText('Common practice of the trade: read.')).toBeInTheDocument();
  });
  test('opens the derivation of a value within, and Escape closes only that', async () => {
    const onClose = vi.fn<() => void>();
    render(<Derivation label="bore" steps={[BORE]} onClose={onClose} />);
    const pilot = screen.getByRole('button', { name: /^Pilot diameter, 4\.25/ });
    await userEvent.click(pilot);
    expect(screen.getByRole('region', { name: /^Derivation: Pilot diameter/ })).toHaveFocus();
    expect(screen.getByText('reading 2')).toBeInTheDocument();
    expect(screen.getByText(/measured by you$/)).toBeInTheDocument();
    await userEvent.keyboard('{Escape}');
    expect(screen.queryByText('reading 2')).toBeNull();
    expect(pilot).toHaveFocus();
    expect(onClose).not.toHaveBeenCalled();
  });
  test('shows torque in newton metres, never a bare N·mm', () => {
    render(<Derivation label="torque" steps={[TORQUE]} />);
    expect(screen.getByRole('region').textContent).toContain('0.34\u00a0N·m');
    expect(screen.getByRole('region').textContent).not.toContain('N·mm');
  });
  test('that stands open from the start takes no focus and has no Close', () => {
    render(<Derivation label="bore" steps={[PILOT, BORE]} />);
    expect(screen.getByRole('region')).not.toHaveFocus();
    expect(screen.queryByRole('button', { name: 'Close' })).toBeNull();
  });
  test('of something given says so without an equation', () => {
    const pull: Derived = {
      ...TORQUE,
      symbol: 'P',
      value: 83,
      unit: 'N',
      formula: 'P',
      entries: [entry('P', 83, 'N')],
    };
    render(<Derivation label="pull" steps={[pull]} />);
    expect(screen.getByRole('region').textContent).toContain('pull on this joint = 83\u00a0N');
    expect(screen.getByRole('region').textContent).not.toContain('P = P');
  });
});

describe('a value that is little known', () => {
  const between = (range: Derived['range']) => {
    const { container } = render(<DerivationStep derived={{ ...TORQUE, ...(range && { range }) }} />);
    return container.textContent;
  };
  test('says between what it lies and that its range is scatter, where it is the middle', () => {
    expect(between({ low: 300, high: 400 })).toContain(
      'between 0.30\u00a0N·m and 0.40\u00a0N·m. The range is part of the scatter',
    );
  });
  test('says what is expected and that the careful end is used, where it is that end', () => {
    expect(between({ low: 250, middle: 290, high: 336 })).toContain(
      'between 0.25\u00a0N·m and 0.34\u00a0N·m, 0.29\u00a0N·m as expected. The careful end is used.',
    );
  });
  test('says nothing of a value that is known', () => {
    expect(between(undefined)).not.toContain('Little is known');
  });
});
