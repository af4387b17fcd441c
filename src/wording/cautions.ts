/** What to mind at the bench. */
export const CAUTIONS = [
  'Iron, insert and part stay hot for minutes. Work in moving air; stop if the plastic smokes.',
  'The brass may hold lead: wash your hands.',
  'Pull tests store energy and let go suddenly: use a shield and eye protection.',
  'Local codes and licensed practice come before this sheet. Where people could be hurt, a licensed engineer decides.',
] as const;
