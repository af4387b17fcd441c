// @vitest-environment jsdom
import { render, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { CalculationSheet } from '../../../src/app/calculation-sheet/calculation-sheet.tsx';
import { assess } from '../../../src/core/joint/assess.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';

// A whole calculation is a large page, and a busy computer is slow with it.
vi.setConfig({ testTimeout: 60_000 });

// The page of the tests knows the element, not how it opens: the least of it.
beforeAll(() => {
  HTMLDialogElement.prototype.showModal = function open(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close(this: HTMLDialogElement) {
    this.open = false;
    this.dispatchEvent(new Event('close'));
  };
});

function open(changes: Changes = {}) {
  const joint = answerableJoint(changes);
  const insert = theInsert({ knurlDiameter_mm: [4.93, 4.97], pilotDiameter_mm: [4.21] });
  const onClose = vi.fn<() => void>();
  render(
    <CalculationSheet
      name="Cover of a meter"
      scenario="Held by one screw."
      documentVersion={2}
      joint={joint}
      insert={insert}
      assessment={assess(joint, insert)}
      onClose={onClose}
    />,
  );
  const dialog = document.querySelector('dialog');
  if (dialog === null) throw new Error('nothing was opened');
  return { dialog, onClose };
}
const stepNamed = (dialog: HTMLElement, name: string) => {
  const step = within(dialog).getAllByText(name)[0]?.closest('li');
  if (!step) throw new Error(`no step is called ${name}`);
  return step;
};

describe('CalculationSheet', () => {
  test('has title, inputs, steps that refer to one another, checks and cautions', () => {
    const { dialog } = open();
    expect(dialog).toHaveAttribute('open');
    expect(document.getElementById(dialog.getAttribute('aria-labelledby') ?? '')).toHaveTextContent(
      'Cover of a meter',
    );
    expect(dialog).toHaveTextContent('version 2');
    expect(within(dialog).getByText('date').nextElementSibling).toBeEmptyDOMElement();
    expect(within(dialog).getByText('knurl diameter').nextElementSibling).toHaveTextContent(
      '4.93 mm, 4.97 mm; caliper ± 0.03 mm',
    );
    expect(within(dialog).getByText('pull').nextElementSibling).toHaveTextContent('83 N');
    const bore = stepNamed(dialog, 'Bore as printed');
    // 4.21 + 0.05
    expect(bore).toHaveTextContent('4.26 mm');
    const pilot = stepNamed(dialog, 'Pilot diameter');
    expect(bore.querySelector('a')).toHaveAttribute('href', `#${pilot.id}`);
    expect(dialog.querySelectorAll('table')).toHaveLength(4);
    expect(within(dialog).getByText(/Iron, insert and part stay hot/)).toBeInTheDocument();
  });
  test('writes both ends of what is little known', () => {
    const { dialog } = open({ gap_mm: 0.3, loads: { pull_N: 9 } });
    const left = stepNamed(dialog, 'Share of the clamp force left after the time under load');
    expect(left).toHaveTextContent(
      /Little is known of it: between .* as expected\. The careful end is used\./,
    );
  });
  test('without a torque leaves the life of the joint out and says so in the title block', () => {
    const { dialog } = open({ gap_mm: 1.1, loads: { pull_N: 290 } });
    expect(dialog.querySelectorAll('table')).toHaveLength(1);
    expect(dialog).toHaveTextContent('no torque fits');
  });
  test('prints, and closes', async () => {
    const print = vi.spyOn(window, 'print').mockImplementation(() => undefined);
    const { dialog, onClose } = open();
    await userEvent.click(within(dialog).getByText('Print this sheet'));
    expect(print).toHaveBeenCalledTimes(1);
    await userEvent.click(within(dialog).getByText('Close'));
    expect(onClose).toHaveBeenCalledTimes(1);
    print.mockRestore();
  });
});
