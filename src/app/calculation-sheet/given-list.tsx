import type { Insert } from '../../core/inserts/insert.ts';
import type { Joint } from '../../core/joint/joint.ts';
import styles from './given-list.module.css';
import { givenGroups } from './given-rows.ts';

/** All inputs with their units, grouped by what they belong to. */
export function GivenList({ joint, insert }: { readonly joint: Joint; readonly insert: Insert }) {
  return (
    <section className={styles['given']}>
      <h3>Given</h3>
      <div className={styles['groups']}>
        {givenGroups(joint, insert).map(({ title, rows }) => (
          <div key={title} className={styles['group']}>
            <h4>{title}</h4>
            <dl>
              {rows.map(([name, value]) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{value}</dd>
                </div>
              ))}
            </dl>
          </div>
        ))}
      </div>
    </section>
  );
}
