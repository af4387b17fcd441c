import type { InsertRecord, JointDocument } from '../../../storage/document.ts';
import type { Edit } from '../../state/edit.ts';

const NUMBERED = /^insert-(\d+)$/;

/** An id that no insert of the drawer has. */
export function freeId(drawer: readonly InsertRecord[]): string {
  const numbers = drawer.map(({ id }) => Number(NUMBERED.exec(id)?.[1] ?? 0));
  return `insert-${Math.max(drawer.length, ...numbers) + 1}`;
}

/** The drawer with a copy of one insert below it; what is counted and named is not copied. */
export function duplicated(
  document: JointDocument,
  index: number,
): { readonly id: string; readonly edit: Edit } {
  const id = freeId(document.drawer);
  const drawer = document.drawer.flatMap((record, at) => {
    if (at !== index) return [record];
    const { label: _label, count: _count, ...measured } = record;
    return [record, { ...measured, id }];
  });
  return { id, edit: { path: 'drawer', value: drawer } };
}

/** The drawer without one insert; a choice of it goes too. */
export function removed(document: JointDocument, index: number): readonly Edit[] {
  const gone = document.drawer[index];
  return [
    { path: 'drawer', value: document.drawer.filter((_, at) => at !== index) },
    ...(gone?.id === document.chosenInsert ? [{ path: 'chosenInsert', value: undefined }] : []),
  ];
}
