import { createElement, type ReactNode } from 'react';

type Attributes = Readonly<Record<string, string>>;

/** An element of MathML; React's types know none of them. */
export const math = (name: string, attributes: Attributes, ...children: ReactNode[]): ReactNode =>
  createElement<Attributes, Element>(name, attributes, ...children);

export const row = (...children: ReactNode[]): ReactNode => math('mrow', {}, ...children);
export const operator = (sign: string, attributes: Attributes = {}): ReactNode =>
  math('mo', attributes, sign);
export const text = (words: string): ReactNode => math('mtext', {}, words);

/** Brackets that grow with what they hold. */
export const fenced = (open: string, of: ReactNode, close: string): ReactNode =>
  row(
    operator(open, { form: 'prefix', fence: 'true' }),
    of,
    operator(close, { form: 'postfix', fence: 'true' }),
  );
