import { Fragment } from 'react';
import { formulaParts } from './formula-parts.ts';

/** A formula or a symbol set for reading: quantities italic, subscripts low, exponents high. */
export function Formula({ text }: { readonly text: string }) {
  return formulaParts(text).map((part, index) => {
    // A formula is a fixed sequence: its places are its keys.
    const key = `${index}-${part.text}`;
    if (part.kind === 'sign') return <Fragment key={key}>{part.text}</Fragment>;
    if (part.kind === 'exponent') return <sup key={key}>{part.text}</sup>;
    return (
      <span key={key}>
        {part.italic ? <i>{part.text}</i> : part.text}
        {part.subscript !== '' && <sub>{part.subscript}</sub>}
      </span>
    );
  });
}
