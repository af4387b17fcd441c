// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { MOTOR_PLATE } from '../../../src/app/demos/motor-plate.ts';
import { PARTS_BOX } from '../../../src/app/demos/parts-box.ts';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { GivenClamped } from '../../../src/app/joint/given/given-clamped.tsx';
import { GivenLoads } from '../../../src/app/joint/given/given-loads.tsx';
import { GivenPattern } from '../../../src/app/joint/given/given-pattern.tsx';
import { useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { JointDocument } from '../../../src/storage/document.ts';

// Typing key by key is slow on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

function Undo() {
  const { undo } = useSheet();
  return (
    <button type="button" onClick={undo}>
      Undo
    </button>
  );
}

function renderGiven(document: JointDocument) {
  render(
    <SheetProvider first={document}>
      <DerivationsProvider>
        <GivenLoads />
        <GivenPattern />
        <GivenClamped />
        <Undo />
      </DerivationsProvider>
    </SheetProvider>,
  );
  return userEvent.setup();
}

const moments = () => screen.getByText('Where the loads act, and moments').closest('details');

async function put(user: ReturnType<typeof userEvent.setup>, label: string, text: string) {
  const field = screen.getByLabelText(label);
  await user.clear(field);
  await user.type(field, `${text}{Enter}`);
}

describe('the loads of a part with one screw', () => {
  test('are those of the screw, so no other ones are shown', () => {
    renderGiven(SENSOR_LID);
    expect(screen.getByLabelText('Pull on this joint')).toHaveValue('70');
    expect(screen.queryByText('Pull on the worst screw')).not.toBeInTheDocument();
    expect(screen.queryByRole('img')).not.toBeInTheDocument();
  });
  test('keep point and moments folded until one is not zero', () => {
    renderGiven(SENSOR_LID);
    expect(moments()).not.toHaveAttribute('open');
  });
});

describe('the loads of a part with several screws', () => {
  test('are told apart from those of the worst screw', () => {
    renderGiven(MOTOR_PLATE);
    expect(screen.getByLabelText('Pull on the whole part')).toHaveValue('40');
    // 40/4 + 900 · 46/(2 · 10² + 2 · 46²) + 3840 · 58/(2 · 10² + 2 · 58²) = 10 + 9.34 + 32.15
    expect(screen.getByRole('button', { name: /^Pull on the worst screw, 51\.5/ })).toBeVisible();
    expect(moments()).toHaveAttribute('open');
  });
  test('are drawn in plan, with a list of every screw', () => {
    renderGiven(MOTOR_PLATE);
    const plan = screen.getByRole('img', { name: /^Four screws in plan\./ });
    expect(plan).toHaveTextContent('pull 51.5, most');
    const rows = within(screen.getByRole('table')).getAllByRole('row');
    expect(rows.map(({ textContent }) => textContent)).toEqual([
      'Screwx, mmy, mmPull, NShear, N',
      '1−24.0−18.044.2most 31.6',
      '224.0−18.017.6most 31.6',
      '3−24.018.0most 51.528.6',
      '424.018.024.928.6',
    ]);
  });
  test('take a comma, a sign and the arrow keys', async () => {
    const user = renderGiven(MOTOR_PLATE);
    await put(user, 'Moment about y', '-0,25');
    expect(screen.getByLabelText('Moment about y')).toHaveValue('-0,25');
    // 3840 − 250 = 3590 N·mm about y: 10 + 9.34 + 3590 · 58/6928 = 49.4
    expect(screen.getByRole('button', { name: /^Pull on the worst screw, 49\.4/ })).toBeVisible();
    screen.getByLabelText('Edge along x at').focus();
    await user.keyboard('{ArrowUp}{Enter}');
    expect(screen.getByLabelText('Edge along x at')).toHaveValue('35');
  });
  test('stay unfolded when the last of them is set to zero', async () => {
    const user = renderGiven({
      ...SENSOR_LID,
      joint: { ...SENSOR_LID.joint, loads: { ...SENSOR_LID.joint.loads, shearAcross_N: 6 } },
    });
    expect(moments()).toHaveAttribute('open');
    await put(user, 'Load across it, along y', '0');
    expect(moments()).toHaveAttribute('open');
  });
  test('name an edge that a screw lies beyond, and mend it by one press', async () => {
    const user = renderGiven(MOTOR_PLATE);
    await put(user, 'Edge along y at', '17');
    expect(screen.getByRole('alert')).toHaveTextContent(
      'A screw 18.0 mm from the middle lies beyond the edge at 17.0 mm',
    );
    await user.click(screen.getByRole('button', { name: 'Put the edge at 27' }));
    expect(screen.getByLabelText('Edge along y at')).toHaveValue('27');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
  });
});

describe('the layout of the screws', () => {
  test('asks for what its kind needs, and goes back with undo', async () => {
    const user = renderGiven(SENSOR_LID);
    await user.selectOptions(screen.getByLabelText('Layout'), 'circular');
    expect(screen.getByLabelText('Screws on the circle')).toHaveValue('4');
    expect(screen.getByLabelText('Circle ⌀')).toHaveValue('40');
    await user.click(screen.getByText('Undo'));
    expect(screen.queryByLabelText('Circle ⌀')).not.toBeInTheDocument();
    expect(screen.getByLabelText('Layout')).toHaveValue('single');
  });
  test('that is free has a place for each screw, more and fewer of them', async () => {
    const user = renderGiven(SENSOR_LID);
    await user.selectOptions(screen.getByLabelText('Layout'), 'free');
    expect(screen.queryByText('Take out')).not.toBeInTheDocument();
    await user.click(screen.getByText('Add a screw'));
    await user.click(screen.getByText('Add a screw'));
    await put(user, 'Screw 3, y, mm', '12,5');
    expect(screen.getByLabelText('Screw 3, x, mm')).toHaveValue('40');
    await user.click(screen.getByLabelText('Take out screw 2'));
    expect(screen.getByLabelText('Screw 2, x, mm')).toHaveValue('40');
    expect(screen.getByLabelText('Screw 2, y, mm')).toHaveValue('12.5');
    expect(screen.queryByLabelText('Screw 3, x, mm')).not.toBeInTheDocument();
  });
  test('of one screw does not take a moment in the plane; one press lets the load act at the screw', async () => {
    const user = renderGiven(MOTOR_PLATE);
    await user.selectOptions(screen.getByLabelText('Layout'), 'single');
    expect(screen.getByRole('alert')).toHaveTextContent('One screw cannot take a moment');
    await user.click(screen.getByRole('button', { name: 'Let the load act at the screw' }));
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    expect(screen.getByLabelText('Layout')).toHaveValue('single');
    expect(screen.getByLabelText('Moment in the plane')).toHaveValue('0.0');
  });
  test('and a moment that are only valid together go in together', async () => {
    const user = renderGiven(SENSOR_LID);
    await put(user, 'Moment in the plane', '0.8');
    expect(screen.getByRole('alert')).toHaveTextContent('Add a second screw');
    await user.selectOptions(screen.getByLabelText('Layout'), 'rectangular');
    expect(screen.queryByRole('alert')).not.toBeInTheDocument();
    // About the axis: 800 N·mm on four screws 25 mm off: 8 N, with 20/4 = 5 N along x.
    expect(screen.getByRole('button', { name: /^Load across the worst screw, 11\.7/ })).toBeVisible();
  });
});

describe('a metal spacer', () => {
  test('begins two millimetres wider than the hole, of steel, and can be left out', async () => {
    const user = renderGiven(SENSOR_LID);
    await user.selectOptions(screen.getByLabelText('Metal spacer'), 'sleeve');
    expect(screen.getByLabelText('Spacer ⌀')).toHaveValue('5.4');
    expect(screen.getByLabelText('Spacer of')).toHaveValue('steel');
    await user.selectOptions(screen.getByLabelText('Metal spacer'), 'none');
    expect(screen.queryByLabelText('Spacer ⌀')).not.toBeInTheDocument();
  });
  test('has a wall, or is not taken', async () => {
    const user = renderGiven(PARTS_BOX);
    await put(user, 'Spacer ⌀', '3,2');
    expect(screen.getByLabelText('Spacer ⌀')).toBeInvalid();
    await user.click(screen.getByRole('button', { name: 'Use ⌀ 5.4' }));
    expect(screen.getByLabelText('Spacer ⌀')).toHaveValue('5.4');
  });
});

describe('service', () => {
  test('says when the screw is tightened again, and whether it shakes', async () => {
    const user = renderGiven(SENSOR_LID);
    await user.selectOptions(screen.getByLabelText('Tightened again'), 'hour, day, week, month');
    expect(screen.getByLabelText('Tightened again')).toHaveValue('4');
    await user.selectOptions(screen.getByLabelText('Vibration'), 'present');
    expect(screen.getByLabelText('Vibration')).toHaveValue('present');
  });
});
