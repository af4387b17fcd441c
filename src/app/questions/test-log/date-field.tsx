import { useId } from 'react';
import { controlAria, FieldFrame, messageOf } from '../../fields/field-frame.tsx';
import css from '../../fields/fields.module.css';
import { useDocumentField } from '../../joint/use-document-field.ts';

interface DateFieldProps {
  readonly path: string;
  readonly label: string;
  readonly place: string;
}

/** A day, by the browser's own field for it. */
export function DateField({ path, label, place }: DateFieldProps) {
  const id = useId();
  const { value, take, problem } = useDocumentField(path, place);
  const message = messageOf(undefined, problem);
  return (
    <FieldFrame id={id} label={label} layout="row" description="" message={message}>
      <input
        {...controlAria({ id, label, layout: 'row', hasMessage: message !== undefined })}
        className={css.control}
        type="date"
        value={typeof value === 'string' ? value : ''}
        onChange={(event) => {
          if (event.target.value !== '') take(event.target.value);
        }}
      />
    </FieldFrame>
  );
}
