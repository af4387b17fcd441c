/** The id of a question is the anchor of its section. */
export type QuestionId = 'insert' | 'hole' | 'tight' | 'hold' | 'tests';

export const QUESTIONS: readonly { readonly id: QuestionId; readonly question: string }[] = [
  { id: 'insert', question: 'Which insert?' },
  { id: 'hole', question: 'What hole?' },
  { id: 'tight', question: 'How tight?' },
  { id: 'hold', question: 'Will it hold?' },
  { id: 'tests', question: 'What did my tests say?' },
];
