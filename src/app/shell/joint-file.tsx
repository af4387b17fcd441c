import { useRef, useState } from 'react';
import { documentFileName, documentText, saveText } from '../state/document-file.ts';
import { useDocumentAtPress, useSheetActions } from '../state/sheet-context.ts';
import styles from './joint-file.module.css';
import { refusalLines } from './refusal-lines.ts';
import { useSay } from './say.ts';

/** Opens a joint from a file and saves this one as a file. */
export function JointFile() {
  const { open } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const say = useSay();
  const input = useRef<HTMLInputElement>(null);
  const [reading, setReading] = useState(false);
  const read = async (file: File) => {
    setReading(true);
    try {
      const { readDocumentText } = await import('../state/kept-joint.ts');
      const result = readDocumentText(await file.text());
      if (result.kind === 'admitted') {
        open(result.document);
        say({ text: `Opened from ${file.name}. Undo brings the joint before it back.` });
      } else {
        const lines = await refusalLines(result.refusals);
        say({ text: `${file.name} was not opened; the joint on the sheet stays.`, lines, isFault: true });
      }
    } catch {
      say({ text: `${file.name} could not be read from the disk.`, isFault: true });
    } finally {
      setReading(false);
    }
  };
  return (
    <span className={styles.file}>
      <button type="button" className="go" disabled={reading} onClick={() => input.current?.click()}>
        Open a joint…
      </button>
      <button
        type="button"
        className="go"
        onClick={() => {
          const document = documentAtPress();
          saveText(documentText(document), documentFileName(document.name));
        }}
      >
        Save this joint
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label="Joint document"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file) void read(file);
          event.target.value = '';
        }}
      />
    </span>
  );
}
