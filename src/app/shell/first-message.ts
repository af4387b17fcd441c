import { saveText } from '../state/document-file.ts';
import type { Kept } from '../state/kept-joint.ts';
import { refusalLines } from './refusal-lines.ts';
import type { Message } from './say.ts';

/** What has to be said on opening the page when what was kept could not be read. */
export async function firstMessage(kept: Extract<Kept, { kind: 'set-aside' }>): Promise<Message> {
  const where = kept.moved
    ? 'It has been set aside whole on this device'
    : 'It stays where it is, so nothing new is kept until it is saved as a file';
  return {
    text: `The joint that was kept here could not be read. ${where}, and a joint to begin with is shown.`,
    lines: await refusalLines(kept.refusals),
    isFault: true,
    offer: {
      label: 'Save what was kept as a file',
      apply: () => saveText(kept.text, 'kept-joint.json'),
    },
  };
}
