// @vitest-environment jsdom
import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { RejectionAnswer, ToldAnswer } from '../../../src/app/answers/told-answer.tsx';
import { DerivationSlot } from '../../../src/app/derivation/derivation-slot.tsx';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { reasonForHole } from '../../../src/wording/reasons.ts';
import { plainText } from '../../../src/wording/sentence.ts';
import { answerableJoint, assessed, theInsert } from '../../support/joints.ts';

describe('a sentence of the answers', () => {
  test('is whole before its numbers can be opened, and then opens them below all answers', async () => {
    const sentence = reasonForHole(assessed());
    const { container } = render(
      <DerivationsProvider>
        <p>
          <ToldAnswer sentence={sentence} />
        </p>
        <DerivationSlot name="answers" />
      </DerivationsProvider>,
    );
    const [paragraph, slot] = container.children;
    expect(paragraph?.textContent).toBe(plainText(sentence));
    const pilot = await screen.findByRole('button', { name: /^Pilot diameter, 4\.21.mm, open derivation/ });
    expect(paragraph?.textContent).toBe(plainText(sentence));
    await userEvent.click(pilot);
    expect(slot).toContainElement(screen.getByRole('region', { name: /^Derivation: Pilot diameter/ }));
  });
  test('opens the numbers of a reason to be out: knurl 4.93 mm and two lines of 0.43 mm', async () => {
    const rejection = {
      insertId: 'usual',
      code: 'boss-too-small',
      bossDiameter: 5.7,
      leastDiameter: 5.79,
    } as const;
    render(
      <DerivationsProvider>
        <p>
          <RejectionAnswer joint={answerableJoint()} insert={theInsert()} rejection={rejection} />
        </p>
        <DerivationSlot name="answers" />
      </DerivationsProvider>,
    );
    await userEvent.click(
      await screen.findByRole('button', { name: /^Boss that the insert needs, 5\.79.mm/ }),
    );
    expect(screen.getByRole('region', { name: /^Derivation/ })).toHaveTextContent(
      'least boss diameter: one line of wall round the knurl = 5.79 mm',
    );
  });
});
