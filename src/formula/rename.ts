import { type Rewriting, rewritten } from './rewrite.ts';

/** The formula after a sheet has got another name. */
export function afterSheetRename(text: string, from: string, to: string): string {
  return rewritten(text, (reference): Rewriting => {
    if (reference.type === 'name' || !isSame(reference.sheet, from)) return null;
    return reference.type === 'cell'
      ? { type: 'cells', sheet: to, start: reference, end: reference }
      : { type: 'cells', sheet: to, start: reference.start, end: reference.end };
  });
}

/** The formula after a sheet has gone: what pointed to it points nowhere. */
export function afterSheetRemoval(text: string, sheet: string): string {
  return rewritten(text, (reference) =>
    reference.type !== 'name' && isSame(reference.sheet, sheet) ? { type: 'gone' } : null,
  );
}

/** The formula after a name for cells has changed. */
export function afterNameRename(text: string, from: string, to: string): string {
  return rewritten(text, (reference) =>
    reference.type === 'name' && isSame(reference.name, from) ? { type: 'name', name: to } : null,
  );
}

function isSame(one: string | null, other: string): boolean {
  return one !== null && one.toLowerCase() === other.toLowerCase();
}
