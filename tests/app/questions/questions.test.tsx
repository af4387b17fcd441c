// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { HowTight } from '../../../src/app/questions/how-tight/how-tight.tsx';
import { Notices } from '../../../src/app/questions/notices/notices.tsx';
import { WhatHole } from '../../../src/app/questions/what-hole/what-hole.tsx';
import { lengthText } from '../../../src/wording/amount.ts';
import { answerableJoint, assessed, type Changes, noticed } from '../../support/joints.ts';
import { expectPublished } from '../../support/published.ts';

vi.setConfig({ testTimeout: 30_000 });

const show = (content: ReactNode) => render(<DerivationsProvider>{content}</DerivationsProvider>);
const given = (changes: Changes = {}) => ({ joint: answerableJoint(changes), assessment: assessed(changes) });

describe('WhatHole', () => {
  test('stands with the derivation of the drawn hole open', () => {
    const { joint, assessment } = given();
    show(<WhatHole joint={joint} assessment={assessment} />);
    const region = screen.getByRole('region', { name: 'Derivation: hole to draw' });
    expect(region.textContent).toContain(`hole to draw = ${assessment.hole.drawn.value.toFixed(2)}\u00a0mm`);
    expect(region.textContent).toContain('bore as printed');
    expect(region.textContent).toContain('printed bore less drawn hole');
  });
  test('says what goes on the drawing, each number with its way', async () => {
    const { joint, assessment } = given();
    show(<WhatHole joint={joint} assessment={assessment} />);
    const table = screen.getByRole('table', { name: 'For the drawing' });
    const rows = [
      'Hole to draw',
      'Bore as printed',
      'Depth',
      'Mouth',
      'Boss, at least',
      'Wall round the hole',
      'Melt',
      'Floor left',
      'Bite of the knurl',
    ];
    for (const name of rows) {
      const row = within(table).getByRole('row', { name: new RegExp(`^${name}`) });
      expect(within(row).getAllByRole('button').length).toBeGreaterThan(0);
    }
    await userEvent.click(within(table).getByRole('button', { name: /^Hole depth/ }));
    expect(within(table).getByRole('region').textContent).toContain('hole depth =');
  });
  test('says what a tenth of a millimetre does', () => {
    const { joint, assessment } = given();
    show(<WhatHole joint={joint} assessment={assessment} />);
    const table = screen.getByRole('table', { name: 'If the bore comes out' });
    const wider = within(table).getByRole('row', { name: /wider/ });
    const expected = within(table).getByRole('row', { name: /as expected/ });
    const shareIn = (row: HTMLElement) =>
      Number.parseInt(within(row).getAllByRole('button')[1]?.textContent ?? '', 10);
    expect(shareIn(wider)).toBeLessThan(shareIn(expected));
  });
  test('leaves the printer out where the slicer corrects holes', () => {
    const { joint, assessment } = given({ holes: { compensation: 'in-slicer' } });
    show(<WhatHole joint={joint} assessment={assessment} />);
    const region = screen.getByRole('region', { name: 'Derivation: hole to draw' });
    expect(region.textContent).not.toContain('printed bore less drawn hole');
    expect(screen.getByText(/the slicer corrects the hole/)).toBeInTheDocument();
  });
});

describe('HowTight', () => {
  test('gives dial, least and most in four units, each with its derivation', async () => {
    const { joint, assessment } = given();
    if (assessment.torque.kind !== 'window') throw new Error('the usual joint has a window');
    show(<HowTight joint={joint} assessment={assessment} />);
    const dial = assessment.torque.dial.value;
    const row = screen.getByRole('row', { name: /^Dial/ });
    const cells = within(row)
      .getAllByRole('cell')
      .map(({ textContent }) => textContent);
    expect(cells[0]).toBe((dial / 1000).toFixed(2));
    expectPublished(dial / 10, cells[1] ?? '');
    expectPublished(dial / 112.98482902761667, cells[2] ?? '');
    expectPublished(dial / 98.0665, cells[3] ?? '');
    for (const [index, unit] of ['N·m', 'cN·m', 'lbf·in', 'kgf·cm'].entries()) {
      const button = within(row).getByRole('button', {
        name: `Dial, ${cells[index]} ${unit}, open derivation`,
      });
      await userEvent.click(button);
      expect(screen.getByRole('region', { name: `Derivation: Dial, ${cells[index]} ${unit}` })).toBeVisible();
    }
    expect(screen.getByText(/^torque in the unit of the tool/)).toBeVisible();
  });
  test('says where no torque fits, the two ends and what opens a window', () => {
    const { joint, assessment } = given({ gap_mm: 1.4, loads: { pull_N: 210 } });
    expect(assessment.torque.kind).toBe('refused');
    show(<HowTight joint={joint} assessment={assessment} />);
    expect(screen.getByRole('heading', { name: 'No torque fits' })).toBeInTheDocument();
    expect(screen.getByText(/close the gap/)).toBeInTheDocument();
    expect(screen.queryByRole('row', { name: /^Dial/ })).toBeNull();
    expect(screen.getByRole('row', { name: /^Least/ })).toBeInTheDocument();
  });
  test('says what is left of the clamp force at both ends of a little known creep, and which counts', async () => {
    const { joint, assessment } = given({ gap_mm: 0.4, loads: { pull_N: 12, shear_N: 1 } });
    const { unmount } = show(<HowTight joint={joint} assessment={assessment} />);
    const sentence = screen.getByText(/^At the dial the screw clamps with/);
    expect(sentence).toHaveTextContent(/at the careful end, which counts; up to \d+\s% at the other/);
    await userEvent.click(
      screen.getByRole('button', { name: /^Share of the clamp force left at best, \d+\s%, open/ }),
    );
    const best = assessment.preloadLeft.range?.high ?? Number.NaN;
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      `share of the clamp force left after the time under load = ${best.toPrecision(3)}`,
    );
    unmount();
    show(<HowTight {...given()} />);
    expect(screen.queryByText(/careful end/)).toBeNull();
  });
  test('gives cautions only where the torque is felt', () => {
    const byHand = given({ tool: { kind: 'hand' }, loads: { pull_N: 10, shear_N: 0 } });
    const { unmount } = show(<HowTight {...byHand} />);
    expect(screen.getByRole('heading', { name: 'By hand' })).toBeInTheDocument();
    unmount();
    show(<HowTight {...given()} />);
    expect(screen.queryByRole('heading', { name: 'By hand' })).toBeNull();
  });
});

describe('Notices', () => {
  test('are a list of sentences', () => {
    const notices = noticed();
    show(<Notices notices={notices} />);
    expect(screen.getAllByRole('listitem')).toHaveLength(notices.length);
    expect(screen.getByText(/^The infill is 37/)).toBeInTheDocument();
  });
  test('open their computed numbers below the sentence', async () => {
    const { assessment } = given();
    show(<Notices notices={noticed()} />);
    const notice = screen.getByText(/^The wall round the hole is/);
    expect(notice).toHaveTextContent(/^The wall round the hole is \d\.\d+.mm; practice asks for 2\.4.mm\./);
    await userEvent.click(
      within(notice).getByRole('button', { name: /^Wall thickness, .* open derivation/ }),
    );
    const { wall } = assessment.hole;
    expect(within(notice).getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      `wall thickness = ${lengthText(wall.value).replace('\u00a0', ' ')}`,
    );
  });
  test('leave no heading where there are none', () => {
    const { container } = render(<Notices notices={[]} />);
    expect(container).toBeEmptyDOMElement();
  });
});
