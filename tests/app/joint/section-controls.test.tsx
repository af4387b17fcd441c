// @vitest-environment jsdom
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { sectionControls } from '../../../src/app/joint/section-controls.tsx';
import { answerableJoint, assessed, type Changes, jointDocument } from '../../support/joints.ts';

const lengthOf = (changes: Changes) => {
  const drawn = { joint: answerableJoint(changes), assessment: assessed(changes) };
  return sectionControls(drawn, jointDocument(changes).joint.host, 0)['screw-length'];
};

describe('the length of the screw on the section', () => {
  test('opens as the one that was chosen', () => {
    render(<DerivationsProvider>{lengthOf({})}</DerivationsProvider>);
    expect(screen.getByRole('button', { name: /^Screw length, 8\.0.mm, open derivation/ })).toHaveTextContent(
      /^8$/,
    );
  });
  test('opens as the least where no length fits: grip 2.7 mm and one diameter', async () => {
    render(<DerivationsProvider>{lengthOf({ screw: { length_mm: 4.1 } })}</DerivationsProvider>);
    await userEvent.click(screen.getByRole('button', { name: /^Least length of a screw, 5\.7.mm/ }));
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      'least length of the screw = 5.7 mm',
    );
  });
});
