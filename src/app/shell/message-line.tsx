import styles from './message-line.module.css';
import type { Message } from './say.ts';

interface MessageLineProps {
  readonly message: Message | null;
  readonly onDone: () => void;
}

/** What the page has to tell; it stays until it is put away. */
export function MessageLine({ message, onDone }: MessageLineProps) {
  return (
    <div role="status">
      {message === null ? null : (
        <div className={message.isFault ? `${styles.message} ${styles.fault}` : styles.message}>
          <p>{message.text}</p>
          {message.lines ? (
            <ul>
              {message.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          ) : null}
          <p className={styles.presses}>
            {message.offer ? (
              <button type="button" className="go" onClick={message.offer.apply}>
                {message.offer.label}
              </button>
            ) : null}
            <button type="button" className="go" onClick={onDone}>
              Put this note away
            </button>
          </p>
        </div>
      )}
    </div>
  );
}
