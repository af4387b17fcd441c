import type { Notice } from '../../../core/joint/assessment.ts';
import { sentenceOfNotice } from '../../../wording/notices.ts';
import styles from './notices.module.css';

export interface NoticesProps {
  readonly notices: readonly Notice[];
}

/** What to know about the joint that does not refuse an answer, in plain sentences. */
export function Notices({ notices }: NoticesProps) {
  if (notices.length === 0) return null;
  return (
    <section className={styles['notices']} aria-labelledby="notices-title">
      <h3 id="notices-title">To know about this joint</h3>
      <ul>
        {notices.map((notice) => (
          <li key={notice.code} data-code={notice.code}>
            {sentenceOfNotice(notice)}
          </li>
        ))}
      </ul>
    </section>
  );
}
