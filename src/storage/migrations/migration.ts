/** One step from the version before to this one; pure, and unaware of whether the document is sound. */
export interface Migration {
  readonly to: number;
  readonly migrate: (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
}
