import type { CellRange } from '../base/address.ts';
import type { Unit } from '../base/unit.ts';
import { cellAt } from './cells.ts';
import type { CellStyle, Format, Question, Role, Sheet } from './document.ts';

/** What a part of the dress is over several cells: the same for all of them, or not. */
export type Shared<T> = { readonly all: T } | 'mixed';

/** What the cells of a range have in common beside their contents; null where a part is absent. */
export interface SharedDress {
  /** `text` also stands for figured: no other role. */
  readonly role: Shared<Role>;
  readonly unit: Shared<Unit | null>;
  readonly format: Shared<Format | null>;
  readonly question: Shared<Question | null>;
  readonly note: Shared<string | null>;
  readonly across: Shared<number | null>;
  readonly locked: Shared<boolean>;
  readonly bold: Shared<boolean>;
  readonly wraps: Shared<boolean>;
  readonly align: Shared<NonNullable<CellStyle['align']> | null>;
  readonly shade: Shared<NonNullable<CellStyle['shade']> | null>;
}

export function sharedDress(sheet: Sheet, { from, to }: CellRange): SharedDress {
  const seen = new Map<string, Set<string>>();
  const values = new Map<string, unknown>();
  for (let row = from.row; row <= to.row; row += 1) {
    for (let column = from.column; column <= to.column; column += 1) {
      const cell = cellAt(sheet, { row, column });
      const role = cell?.role ?? 'text';
      const parts = {
        role: role === 'figured' ? 'text' : role,
        unit: cell?.unit ?? null,
        format: cell?.format ?? null,
        question: cell?.question ?? null,
        note: cell?.note ?? null,
        across: cell?.across ?? null,
        locked: cell?.locked ?? false,
        bold: cell?.style?.bold ?? false,
        wraps: cell?.style?.wraps ?? false,
        align: cell?.style?.align ?? null,
        shade: cell?.style?.shade ?? null,
      };
      for (const [part, value] of Object.entries(parts)) {
        const own = seen.get(part) ?? new Set();
        seen.set(part, own);
        if (own.size < 2) own.add(JSON.stringify(value));
        if (!values.has(part)) values.set(part, value);
      }
    }
  }
  const parts = [...values].map(([part, value]) => [
    part,
    seen.get(part)?.size === 1 ? { all: value } : 'mixed',
  ]);
  return Object.fromEntries(parts) as SharedDress; // every part of the interface is gathered above
}
