import type { CellAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Unit } from '../../base/unit.ts';
import { mayGoAcross } from '../across.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import type { Difference } from '../difference.ts';
import {
  type Cell,
  type CellStyle,
  type Format,
  isFormula,
  type Question,
  type Role,
  type Workbook,
} from '../document.ts';
import { type QuestionFault, questionFaults } from '../question.ts';
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
  /** `text` and `figured` are one wish: no other role. Which of the two it is, the content says. */
  readonly role?: Role;
  readonly unit?: Unit | null;
  readonly format?: Format | null;
  readonly question?: Question | null;
  readonly note?: string | null;
  readonly style?: CellStyle | null;
  /** Over how many columns a heading or words go, their own among them. */
  readonly across?: number | null;
  /** Single traits of the style, where the others of each cell stay. */
  readonly trait?: { readonly [Trait in keyof CellStyle]?: CellStyle[Trait] | null };
}

export type DressFault =
  /** A number would mean something else at once. */
  | {
      readonly code: 'unit_of_a_filled_cell';
      readonly address: CellAddress;
      readonly before: Unit;
      readonly after: Unit;
    }
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'given_with_formula'; readonly address: CellAddress }
  /** Only headings and words cover their neighbors. */
  | { readonly code: 'nothing_to_go_across'; readonly address: CellAddress }
  | { readonly code: 'note_too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'unsound_question'; readonly faults: readonly QuestionFault[] }
  /** What stands in the cell is not what its new question takes. */
  | {
      readonly code: 'content_against_question';
      readonly address: CellAddress;
      readonly cell: Cell;
    };

export const longestNote = 2000;

/** Dresses every cell, or none: the first fault is told with its cell, and nothing has changed. */
export function dressCells(
  workbook: Workbook,
  { sheet: id, addresses, dress }: DressCommand,
): Outcome<Difference, DressFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const noteLength = dress.note?.length ?? 0;
  if (noteLength > longestNote) return failed({ code: 'note_too_long', got: noteLength, most: longestNote });
  const changes: Difference[number][] = [];
  for (const address of addresses) {
    const before = cellAt(sheet, address);
    const after = dressed(before, dress);
    const [was, becomes] = [before?.unit, dress.unit];
    const isOtherLength = isLength(was) && isLength(becomes) && was !== becomes;
    if (typeof before?.content === 'number' && isOtherLength) {
      return failed({ code: 'unit_of_a_filled_cell', address, before: was, after: becomes });
    }
    if (dress.across && !mayGoAcross(after)) return failed({ code: 'nothing_to_go_across', address });
    const fault = after && faultOf(address, after, dress);
    if (fault) return failed(fault);
    changes.push(...changeOf(sheet, address, before, after));
  }
  return done(changes);
}

function faultOf(address: CellAddress, cell: Cell, dress: Dress): DressFault | null {
  const { content, question, unit, role } = cell;
  if (dress.role === 'given' && isFormula(content)) return { code: 'given_with_formula', address };
  const asksAnew = dress.question !== undefined || dress.unit !== undefined || dress.role === 'given';
  if (role !== 'given' || !question || !asksAnew) return null;
  const faults = questionFaults(question, unit);
  if (faults.length > 0) return { code: 'unsound_question', faults };
  return isTaken(cell, question) ? null : { code: 'content_against_question', address, cell };
}

function isTaken(
  { content, unit }: Cell,
  { choices, least = -Infinity, most = Infinity }: Question,
): boolean {
  if (content === null || isFormula(content)) return true;
  if (choices) return choices.includes(String(content));
  return !unit || (typeof content === 'number' && content >= least && content <= most);
}

function dressed(before: Cell | null, { role, trait, ...parts }: Dress): Cell | null {
  const cell: Record<string, unknown> = { ...(before ?? { content: null, role: 'text' }) };
  if (role) cell.role = roleFor(role, before);
  replaceParts(cell, parts);
  if (trait) {
    const style: Record<string, unknown> = { ...(cell.style ?? {}) };
    replaceParts(style, trait);
    cell.style = style;
  }
  if (cell.style && Object.keys(cell.style).length === 0) delete cell.style;
  if (!mayGoAcross(cell as unknown as Cell)) delete cell.across;
  // Only a given asks.
  if (cell.role !== 'given') delete cell.question;
  // What was typed was read in the unit of then.
  if (parts.unit !== undefined && parts.unit !== before?.unit && 'typed' in cell) delete cell.typed;
  const isPlain = Object.keys(cell).every((key) => key === 'content' || key === 'role');
  if (cell.content === null && cell.role === 'text' && isPlain) return null;
  return cell as unknown as Cell; // a cell with parts of a dress in place of its own
}

function replaceParts(whole: Record<string, unknown>, parts: object): void {
  for (const [part, value] of Object.entries(parts)) {
    if (value === null) delete whole[part];
    else if (value !== undefined) whole[part] = value;
  }
}

function roleFor(wanted: Role, before: Cell | null): Role {
  if (wanted !== 'text' && wanted !== 'figured') return wanted;
  return before && isFormula(before.content) ? 'figured' : 'text';
}

/** Inches and feet both show as a tape does, so that nobody would see the one become the other. */
function isLength(unit: Unit | null | undefined): unit is 'in' | 'ft' {
  return unit === 'in' || unit === 'ft';
}
