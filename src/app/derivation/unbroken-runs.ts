import type { Figure, Sentence } from '../../wording/sentence.ts';

/** A number with the comma, the arrow or the bracket that touches it: no line may break within. */
export type Run = readonly (string | Figure)[];

/** A sentence as words, spaces included, and runs that keep together. */
export function unbrokenRuns(sentence: Sentence): readonly (string | Run)[] {
  const found: (string | Run)[] = [];
  let run: (string | Figure)[] = [];
  const end = () => {
    if (run.every((part) => typeof part === 'string')) found.push(run.join(''));
    else found.push(run);
    run = [];
  };
  for (const part of sentence) {
    if (typeof part !== 'string') {
      run.push(part);
      continue;
    }
    const [first, last] = [part.indexOf(' '), part.lastIndexOf(' ')];
    if (first === -1) {
      run.push(part);
      continue;
    }
    run.push(part.slice(0, first));
    end();
    found.push(part.slice(first, last + 1));
    run.push(part.slice(last + 1));
  }
  end();
  return found.map((one) => (typeof one === 'string' ? one : one.filter((part) => part !== '')));
}
