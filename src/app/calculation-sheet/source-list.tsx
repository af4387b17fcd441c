import type { SourceId } from '../../core/sources/sources.ts';
import { STANDINGS, sourceWords } from '../../wording/standing.ts';
import type { StepGroup } from './calculation-steps.ts';
import styles from './source-list.module.css';

/** Sources of all steps, each once, in the order in which they are first used. */
export const sourcesOf = (groups: readonly StepGroup[]): readonly SourceId[] => [
  ...new Set(groups.flatMap(({ steps }) => steps.map(({ derived }) => derived.source))),
];

/** What the square brackets and the signs stand for. */
export function SourceList({ sources }: { readonly sources: readonly SourceId[] }) {
  return (
    <section className={styles['sources']}>
      <h3>Sources</h3>
      <ol>
        {sources.map((source, index) => {
          const { title, note } = sourceWords(source);
          return (
            <li key={source}>
              <span>[{index + 1}]</span> {title} {note}
            </li>
          );
        })}
      </ol>
      <p>
        {Object.values(STANDINGS).map(({ sign, words, meaning }) => (
          <span key={words}>
            {sign} {words}: {meaning}.{' '}
          </span>
        ))}
      </p>
    </section>
  );
}
