import type { Stop } from '../../core/joint/assessment.ts';
import { sentencesOfStop } from '../../wording/stops.ts';
import { QUESTIONS } from '../answers/questions.ts';
import styles from './stop-notice.module.css';

/** No answer is given: why, and what to do instead. It goes only when its cause goes. */
export function StopNotice({ stop }: { readonly stop: Stop }) {
  const { title, because, instead } = sentencesOfStop(stop);
  return (
    <div className={styles.stop} role="alert">
      <strong className={styles.word}>Stop</strong>
      <h2>{title}</h2>
      <p>{because}</p>
      <p>{instead}</p>
      <p className={styles.withheld}>
        {QUESTIONS.map(({ id, question }) => (
          <span key={id}>{question} withheld</span>
        ))}
      </p>
    </div>
  );
}
