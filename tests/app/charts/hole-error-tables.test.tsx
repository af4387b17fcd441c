// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { HoleErrorTables } from '../../../src/app/charts/hole-error-tables.tsx';
import { holeErrors } from '../../../src/app/charts/hole-errors.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { calibrateHoles } from '../../../src/core/holes/calibrate-holes.ts';
import { CATALOGUE } from '../../../src/data/catalogue.ts';
import { holeReading } from '../../support/hole-readings.ts';

const READ = [holeReading(3.5, 3.33), holeReading(4.7, [4.61, 4.58])];

async function opened(readings: typeof READ) {
  const calibration = calibrateHoles(CATALOGUE.uncalibratedHoles, readings);
  render(
    <DerivationsProvider>
      <HoleErrorTables
        calibration={calibration}
        found={holeErrors(calibration, { places: [0, 3] })}
        isRead={readings.length > 0}
      />
    </DerivationsProvider>,
  );
  const user = userEvent.setup();
  await user.click(screen.getByText('The picture as a table'));
  return user;
}

/** A derivation ends in the number that was pressed; it leaves a last nought out. */
function expectResult(region: HTMLElement, meaning: string, button: HTMLElement) {
  const pressed = button.textContent.replace(/0$/, '');
  expect(region.textContent.replaceAll('\u00a0', ' ')).toContain(`${meaning} = ${pressed} mm`);
}

describe('the curve of errors as tables', () => {
  test('opens the expected error and both ends of the band as calculations that come to what they show', async () => {
    const user = await opened(READ);
    const table = screen.getByRole('table', { name: /^Printed less drawn/ });
    const names = [
      ['An unknown printer at ⌀\u00a06.00', 'printed bore less drawn hole'],
      ['This printer at ⌀\u00a06.00', 'printed bore less drawn hole'],
      ['1 in 20 smaller at ⌀\u00a06.00', 'lower end of the error of the next hole'],
      ['1 in 20 larger at ⌀\u00a06.00', 'upper end of the error of the next hole'],
    ] as const;
    for (const [name, meaning] of names) {
      const button = within(table).getByRole('button', { name: new RegExp(`^${name}, .*open derivation$`) });
      await user.click(button);
      const region = screen.getByRole('region', { name: new RegExp(`^Derivation: ${name}`) });
      expectResult(region, meaning, button);
      await user.keyboard('{Escape}');
      expect(region).not.toBeInTheDocument();
    }
  });
  test('opens error and uncertainty of each hole that was read, by its number in the log', async () => {
    const user = await opened(READ);
    const table = screen.getByRole('table', { name: 'The holes that were read, mm' });
    expect(within(table).getAllByRole('button')).toHaveLength(4);
    const button = within(table).getByRole('button', { name: /^Hole 4, printed less drawn/ });
    await user.click(button);
    const region = screen.getByRole('region', { name: /^Derivation: Hole 4/ });
    expectResult(region, 'printed bore less drawn hole', button);
    expect(region).not.toHaveTextContent('Fitted from');
  });
  test('opens the diameter that the slicer saw of a polygon', async () => {
    const user = await opened([holeReading(3.5, 3.33), holeReading(4.7, [4.51], { facets: 12 })]);
    // 4.7 · cos(15°) = 4.540 mm (hand calculation)
    await user.click(screen.getByRole('button', { name: /^Hole 4, drawn as seen by the slicer, 4.54/ }));
    const region = screen.getByRole('region', { name: /^Derivation: Hole 4/ });
    expect(region).toHaveTextContent('diameter that the slicer saw = 4.54 mm');
    expect(screen.queryByRole('button', { name: /^Hole 1, drawn/ })).not.toBeInTheDocument();
  });
  test('without a reading has the unknown printer alone', async () => {
    await opened([]);
    expect(screen.queryByText('this printer')).not.toBeInTheDocument();
    expect(screen.getAllByRole('table')).toHaveLength(1);
  });
});
