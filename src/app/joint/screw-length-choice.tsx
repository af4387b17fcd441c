import { memo } from 'react';
import { CATALOGUE } from '../../data/catalogue.ts';
import { lengthNumber } from '../../wording/amount.ts';
import type { Choice, FieldLayout } from '../fields/field-props.ts';
import type { Findings } from '../state/findings.ts';
import { useFindingsValue, useSheetValue } from '../state/sheet-context.ts';
import { DocumentChoice } from './document-choice.tsx';

const CHOSEN = 'chosen';
const shortLength = (length: number) => lengthNumber(length).replace(/\.0$/, '');

/** Length that the program chose, as text; empty where it was not left to it. */
function foundLength({ shown }: Findings): string {
  const screw = shown?.assessment.screw;
  return screw?.kind === 'chosen' && screw.choice === 'standard' ? shortLength(screw.length.value) : '';
}

interface ScrewLengthChoiceProps {
  readonly place: string;
  readonly layout?: FieldLayout;
}

/** The screw's length: left to the program, or one that is sold. */
export const ScrewLengthChoice = memo(function ScrewLengthChoice(props: ScrewLengthChoiceProps) {
  const { place, layout = 'row' } = props;
  const { thread, length_mm: fixed } = useSheetValue(({ journal }) => journal.present.joint.screw);
  const found = useFindingsValue(foundLength);
  const sold = CATALOGUE.screwLengths.find((row) => row.thread === thread)?.lengths ?? [];
  const lengths = fixed === undefined || sold.includes(fixed) ? sold : [...sold, fixed];
  const open = found === '' ? 'chosen for me' : layout === 'bare' ? found : `${found}, chosen for me`;
  const choices: Choice<string>[] = [
    { value: CHOSEN, label: open, group: 'Left to the program' },
    ...lengths.map((length) => ({ value: String(length), label: shortLength(length), group: 'Fixed by me' })),
  ];
  return (
    <DocumentChoice
      path="joint.screw.length_mm"
      place={place}
      label="Screw length"
      layout={layout}
      choices={choices}
      read={(value) => (typeof value === 'number' ? String(value) : CHOSEN)}
      write={(choice) => (choice === CHOSEN ? undefined : Number(choice))}
    />
  );
});
