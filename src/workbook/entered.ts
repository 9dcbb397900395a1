import { type Cell, isFormula } from './document.ts';
import type { Entry } from './entry.ts';

/** The cell with its new content; what it is for, how it looks and what it asks stay. */
export function cellAfterEntry(before: Cell | null, entry: Entry): Cell | null {
  const formula = isFormula(entry.content);
  if (!before) {
    if (entry.content === null) return null;
    return { role: formula ? 'figured' : 'text', ...entry };
  }
  const { content: _content, typed: _typed, across, ...others } = before;
  // What is figured shows in its own column.
  const kept = across === undefined || formula ? others : { ...others, across };
  const role = before.role === 'text' && formula ? 'figured' : before.role;
  const isPlain = (role === 'text' || role === 'figured') && !kept.question;
  const emptied = entry.content === null && isPlain && !(kept.format || kept.style || kept.note);
  return emptied ? null : { ...kept, ...entry, role };
}

export function sameCell(one: Cell | null, other: Cell | null): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
