import {
  DetailedCellError,
  ExportedCellChange,
  type FunctionPluginDefinition,
  HyperFormula,
  type RawCellContent,
  type SimpleCellAddress,
  SimpleRangeValue,
} from 'hyperformula';
import type { CellBlock, CellFault, CellValue, Plain } from '../base/value.ts';
import type { Place } from './calculator.ts';
import { faultOf } from './carried-fault.ts';
import type { Kind } from './filled-down.ts';
import {
  faultFunction,
  hidden,
  type InsideArgument,
  type InsideFunction,
  languageWith,
  ownPlugin,
} from './own-plugin.ts';
import { plainBlock, plainValue } from './plain-value.ts';
import { readOnce } from './read-once.ts';
import { settings } from './settings.ts';
import { wordEngineError } from './wording.ts';

/** What the engine is given for a cell: formulas are checked before, and a fault may stand in the place of one. */
export type EngineContent = Plain | EngineFormula | CellFault;

/** Of the formulas of one kind the engine reads a single one. */
export interface EngineFormula {
  readonly formula: string;
  readonly kind?: Kind | undefined;
}

export interface EngineSheet {
  readonly name: string;
  readonly rows: readonly (readonly EngineContent[])[];
}

/** The outside engine with one book in it. What it does may throw, and then it is to be thrown away. */
export interface FormulaEngine {
  /** Takes edits as one; gives the cells that may have another value now. */
  write(edits: readonly (Place & { readonly content: EngineContent })[]): readonly Place[];
  /** The value of a cell; a fault names the cell where it began, be it the same. */
  valueAt(place: Place): CellValue;
  /** Whether a formula takes more than its own cell. */
  isSpilling(place: Place): boolean;
  /** Whether any formula does. */
  hasSpilling(): boolean;
  evaluate(sheet: string, expression: string): CellValue | CellBlock;
  close(): void;
}

export function buildEngine(
  sheets: readonly EngineSheet[],
  functions: readonly InsideFunction[],
  builtins: readonly FunctionPluginDefinition[],
): FormulaEngine {
  const faults: CellFault[] = [];
  const alike = readOnce();
  let taken: InsideArgument = 0;
  const own: readonly InsideFunction[] = [
    ...functions,
    faultFunction(faults),
    {
      name: hidden.take,
      arguments: 1,
      body: (given) => {
        taken = given ?? 0;
        return taken;
      },
    },
  ];

  function raw(content: EngineContent): RawCellContent {
    if (typeof content === 'string') return `'${content}`; // a text stays a text, whatever it looks like
    if (typeof content === 'number' && !Number.isFinite(content)) return raw(wordEngineError('NUM', ''));
    if (typeof content !== 'object' || content === null) return content;
    if ('formula' in content) return content.kind ? alike.mark(content.kind) : `=${content.formula}`;
    return `=${hidden.fault}(${faults.push(content) - 1})`;
  }

  const contents = Object.fromEntries(
    sheets.map((sheet) => [sheet.name, sheet.rows.map((cells) => cells.map(raw))]),
  );
  const engine = alike.within(() =>
    HyperFormula.buildFromSheets(contents, {
      ...settings,
      dateFormats: [...settings.dateFormats],
      timeFormats: [...settings.timeFormats],
      currencySymbol: [...settings.currencySymbol],
      language: languageWith(own.map((one) => one.name)),
      functionPlugins: [...builtins, ownPlugin(own)],
    }),
  );
  const sheetIds = new Map(sheets.map(({ name }) => [name, engine.getSheetId(name)]));
  const sheetNames = new Map([...sheetIds].map(([name, id]) => [id, name]));

  function inside({ sheet, row, column }: Place): SimpleCellAddress {
    return { sheet: idOf(sheet), row, col: column };
  }

  function idOf(sheet: string): number {
    const id = sheetIds.get(sheet);
    if (id === undefined) throw new Error(`The engine has no sheet ${sheet}.`);
    return id;
  }

  return {
    write: (edits) => {
      // Not the engine's own batch: that notes each step for its undo, and looks through all notes at every step.
      engine.suspendEvaluation();
      for (const { content, ...place } of edits) engine.setCellContents(inside(place), [[raw(content)]]);
      const changes = engine.resumeEvaluation();
      return changes.flatMap((change) => {
        if (!(change instanceof ExportedCellChange)) return [];
        const sheet = sheetNames.get(change.sheet);
        return sheet === undefined ? [] : [{ sheet, row: change.row, column: change.col }];
      });
    },
    valueAt: (place) => {
      const address = inside(place);
      const exact = engine.addressMapping.getCellValue(address);
      if (typeof exact === 'number') return plainValue(exact);
      const value = engine.getCellValue(address);
      if (value instanceof DetailedCellError) return faultOf(value);
      return typeof value === 'number' ? exactNumber(engine, address) : value;
    },
    hasSpilling: () => engine.arrayMapping.count() > 0,
    isSpilling: (place) => engine.getCellType(inside(place)) === 'ARRAYFORMULA',
    evaluate: (sheet, expression) => {
      const shown = engine.calculateFormula(`=${hidden.take}(${expression})`, idOf(sheet));
      const exact = taken;
      const blockShown = Array.isArray(shown);
      if (blockShown && exact instanceof SimpleRangeValue) {
        const block = plainBlock(exact);
        return shown.map((row, down) =>
          row.map((value, across) =>
            value instanceof DetailedCellError ? faultOf(value) : (block[down]?.[across] ?? null),
          ),
        );
      }
      if (shown instanceof DetailedCellError) return faultOf(shown);
      if (blockShown || exact instanceof SimpleRangeValue) throw new Error('A block came out as one value.');
      return plainValue(exact);
    },
    close: () => engine.destroy(),
  };
}

/** A number with all its digits: what the engine hands out is rounded, what it keeps is not. */
function exactNumber(engine: HyperFormula, address: SimpleCellAddress): CellValue {
  const kept = engine.addressMapping.getCellValue(address);
  return kept instanceof SimpleRangeValue ? null : plainValue(kept);
}
