import type { Notice } from '../../../core/joint/assessment.ts';

export interface NoticesProps {
  readonly notices: readonly Notice[];
}

/** What to know about the joint that does not refuse an answer, in plain sentences. */
export function Notices({ notices }: NoticesProps) {
  return <ul>{notices.length}</ul>;
}
