import type { CellAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Unit } from '../../base/unit.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Difference } from '../difference.ts';
import type { Cell, CellStyle, Format, Question, Role, Workbook } from '../document.ts';
import { changeOf } from './write.ts';

/** Changes what cells are for and how they look; their contents stay. */
export interface DressCommand {
  readonly type: 'dress';
  readonly sheet: string;
  readonly addresses: readonly CellAddress[];
  readonly dress: Dress;
}

/** What is named here becomes so; null takes it away; what is not named stays. */
export interface Dress {
  readonly role?: Role;
  readonly unit?: Unit | null;
  readonly format?: Format | null;
  readonly question?: Question | null;
  readonly note?: string | null;
  readonly style?: CellStyle | null;
}

export type DressFault = { readonly code: 'no_such_sheet' };

export function dressCells(
  workbook: Workbook,
  { sheet: id, addresses, dress }: DressCommand,
): Outcome<Difference, DressFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  return done(
    addresses.flatMap((address) => {
      const before = cellAt(sheet, address);
      return changeOf(sheet, address, before, dressed(before, dress));
    }),
  );
}

function dressed(before: Cell | null, dress: Dress): Cell | null {
  const { role, ...parts } = dress;
  const cell: Record<string, unknown> = { ...(before ?? { content: null, role: 'text' }) };
  if (role) cell.role = role;
  for (const [part, value] of Object.entries(parts)) {
    if (value === null) delete cell[part];
    else if (value !== undefined) cell[part] = value;
  }
  const isPlain = Object.keys(cell).every((key) => key === 'content' || key === 'role');
  if (cell.content === null && cell.role === 'text' && isPlain) return null;
  return cell as unknown as Cell; // a cell with parts of a dress in place of its own
}
