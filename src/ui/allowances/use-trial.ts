import { useMemo, useState } from 'react';
import { type CellAddress, writeAddress } from '../../base/address.ts';
import { referencesIn } from '../../formula/references.ts';
import { nameOfCopy, type WrapRow, type WrapTable, wrapTable } from '../../templates/allowances/wraps.ts';
import { tried } from '../../templates/trial.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import type { Command } from '../../workbook/commands.ts';
import type { Difference } from '../../workbook/difference.ts';
import { isFormula, type Workbook } from '../../workbook/document.ts';
import { namedBlock } from '../../workbook/order.ts';
import { wordCommandFault } from '../../workbook/wording.ts';

/** Numbers that are being tried, before any of them is in the workbook. */
export interface Trial {
  /** Whether anything is being tried. */
  readonly isOn: boolean;
  /** The workbook as it would be; as it is where nothing is tried or where it was refused. */
  readonly workbook: Workbook;
  readonly difference: Difference;
  /** Why it cannot be so; null where it can. */
  readonly refusal: string | null;
  /** What was typed for a cell; null where nothing was. */
  readonly typedAt: (sheet: string, address: CellAddress) => string | null;
  readonly type: (sheet: string, address: CellAddress, typed: string) => void;
  /** A copy of a wrap, under a name of its own, goes into the table; the trial goes on with it. Gives its name. */
  readonly copy: (table: WrapTable, wrap: WrapRow) => string;
  /** The wrap that a copy was made of; null for a wrap that is none. */
  readonly copiedFrom: (name: string) => string | null;
  readonly putBack: () => void;
}

interface Tried {
  readonly copies: readonly { readonly from: string; readonly name: string }[];
  readonly entries: ReadonlyMap<
    string,
    { readonly sheet: string; readonly address: CellAddress; readonly typed: string }
  >;
}

const nothing: Tried = { copies: [], entries: new Map() };

export function useTrial(workbook: Workbook): Trial {
  const [wishes, setWishes] = useState<Tried>(nothing);
  const outcome = useMemo(() => triedOn(workbook, wishes), [workbook, wishes]);
  const isOn = wishes.copies.length > 0 || wishes.entries.size > 0;
  return {
    isOn,
    workbook: outcome.workbook,
    difference: outcome.difference,
    refusal: outcome.refusal,
    typedAt: (sheet, address) => wishes.entries.get(keyOf(sheet, address))?.typed ?? null,
    type: (sheet, address, typed) =>
      setWishes((before) => {
        const entries = new Map(before.entries);
        if (typed.trim() === '') entries.delete(keyOf(sheet, address));
        else entries.set(keyOf(sheet, address), { sheet, address, typed });
        return { ...before, entries };
      }),
    copy: (table, wrap) => {
      const name = nameOfCopy(table, wrap.name);
      setWishes((before) => ({ ...before, copies: [...before.copies, { from: wrap.name, name }] }));
      return name;
    },
    copiedFrom: (name) => wishes.copies.find((copy) => copy.name === name)?.from ?? null,
    putBack: () => setWishes(nothing),
  };
}

function keyOf(sheet: string, address: CellAddress): string {
  return `${sheet} ${writeAddress(address)}`;
}

function triedOn(
  workbook: Workbook,
  { copies, entries }: Tried,
): { readonly workbook: Workbook; readonly difference: Difference; readonly refusal: string | null } {
  let after = workbook;
  const difference: Difference[number][] = [];
  const steps: readonly ((now: Workbook) => readonly Command[])[] = [
    ...copies.map(
      ({ from, name }) =>
        (now: Workbook) =>
          copyCommands(now, from, name),
    ),
    () => (entries.size === 0 ? [] : [{ type: 'retype', entries: [...entries.values()] } as const]),
  ];
  for (const commandsOn of steps) {
    const outcome = tried(after, commandsOn(after));
    if (!outcome.ok) return { workbook, difference: [], refusal: wordCommandFault(outcome.fault) };
    difference.push(...outcome.value.difference);
    after = outcome.value.workbook;
  }
  return { workbook: after, difference, refusal: null };
}

/** Into the first free line of the table, or into a line that is put in at its end. */
function copyCommands(workbook: Workbook, from: string, name: string): readonly Command[] {
  const table = wrapTable(workbook);
  const wrap = table?.wraps.find((one) => one.name === from);
  const [first] = table?.columns ?? [];
  if (!table || !wrap || !first) return [];
  const { sheet, lastRow } = table;
  const row = table.freeRow ?? lastRow + 1;
  const lineCommand: readonly Command[] =
    table.freeRow === null
      ? [{ type: 'put_in_line', sheet: sheet.id, address: { row: lastRow, column: first.column } }]
      : [];
  // Only what is filled in: what the line figures, it figures for itself.
  const copies = wrap.fields.map(({ address }): Command => {
    const to = { row, column: address.column };
    return {
      type: 'copy',
      from: { sheet: sheet.id, range: { from: address, to: address } },
      to: { sheet: sheet.id, range: { from: to, to } },
    };
  });
  const named: Command = {
    type: 'enter',
    sheet: sheet.id,
    address: { row, column: first.column },
    typed: name,
  };
  return [...lineCommand, ...copies, named, ...priceCommands(workbook, sheet.name, wrap.row, row)];
}

/** The price of a wrap goes along, where the prices have a line that names each wrap by its own cell. */
function priceCommands(workbook: Workbook, wraps: string, from: number, to: number): readonly Command[] {
  const prices = namedBlock(workbook, 'prices');
  const sheet = prices ? sheetWithId(workbook, prices.sheet) : undefined;
  if (!prices || !sheet) return [];
  const { range } = prices;
  const lineOf = (wrapRow: number) => {
    for (let row = range.from.row + 1; row <= range.to.row; row += 1) {
      const content = cellAt(sheet, { row, column: range.from.column })?.content ?? null;
      if (!isFormula(content)) continue;
      const read = referencesIn(content.formula).flatMap((one) =>
        one.type === 'cell' && (one.sheet ?? sheet.name) === wraps ? [one.row] : [],
      );
      if (read.length > 0 && read.every((one) => one === wrapRow)) return row;
    }
    return null;
  };
  const [source, target] = [lineOf(from), lineOf(to)];
  if (source === null || target === null) return [];
  const block = (row: number) => {
    const at = { row, column: range.to.column };
    return { sheet: sheet.id, range: { from: at, to: at } };
  };
  return [{ type: 'copy', from: block(source), to: block(target) }];
}
