import type { Notice } from '../../../core/joint/assessment.ts';
import { sentenceOfNotice } from '../../../wording/notices.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import styles from './notices.module.css';

export interface NoticesProps {
  readonly notices: readonly Notice[];
}

/** What to know about the joint that does not refuse an answer, in sentences whose computed numbers open below them. */
export function Notices({ notices }: NoticesProps) {
  if (notices.length === 0) return null;
  return (
    <section className={styles['notices']} aria-labelledby="notices-title">
      <h3 id="notices-title">To know about this joint</h3>
      <ul>
        {notices.map((notice) => (
          <DerivationRow key={notice.code} slot={`notice ${notice.code}`}>
            <li data-code={notice.code}>
              <Told sentence={sentenceOfNotice(notice)} />
              <DerivationSlot name={`notice ${notice.code}`} />
            </li>
          </DerivationRow>
        ))}
      </ul>
    </section>
  );
}
