import { columnName } from '../../../src/base/address.ts';
import { check, count, cutInches, figured, given, heading, squareFeet, words } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { allBlank, firstOf, ifFilled, missing, rowsFrom } from '../sentences.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import type { Kind, Part } from './kind.ts';

/** Room for so many different fittings of a kind; each line may stand for several alike. */
export const linesOfKind = 8;
const rows = rowsFrom(2, linesOfKind);
const lastRow = linesOfKind + 1;
const totalRow = lastRow + 1;

/** Where the columns of a kind stand. */
export interface Layout {
  readonly mark: string;
  readonly many: string;
  readonly check: string;
  readonly parts: readonly {
    readonly part: Part;
    readonly wide: string;
    readonly long: string;
    readonly count: string;
  }[];
  readonly sheets: string;
  readonly area: string;
  readonly notCounted: string;
  readonly letterOf: (key: string) => string;
}

export function layoutOf(kind: Kind): Layout {
  const letter = (index: number) => columnName(index);
  const many = 1 + kind.asks.length;
  const firstPart = many + 2;
  const afterParts = firstPart + 3 * kind.parts.length + kind.dimensions.length;
  return {
    mark: 'A',
    many: letter(many),
    check: letter(many + 1),
    parts: kind.parts.map((part, index) => ({
      part,
      wide: letter(firstPart + 3 * index),
      long: letter(firstPart + 3 * index + 1),
      count: letter(firstPart + 3 * index + 2),
    })),
    sheets: letter(afterParts),
    area: letter(afterParts + 1),
    notCounted: letter(afterParts + 2),
    letterOf: (key) => {
      const index = kind.asks.findIndex((one) => one.key === key);
      if (index < 0) throw new Error(`${kind.sheet} asks for no ${key}.`);
      return letter(1 + index);
    },
  };
}

/** A whole column beside the lines of a kind, seen from any sheet. */
export function besideKind(kind: Kind, column: string): string {
  const prefix = /^\w+$/.test(kind.sheet) ? kind.sheet : `'${kind.sheet}'`;
  return `${prefix}!${column}2:${column}${lastRow}`;
}

export function kindSheet(kind: Kind): Form {
  const layout = layoutOf(kind);
  const beside = (column: string) => `${column}2:${column}${lastRow}`;
  const dimensions = kind.dimensions.length;
  return form({
    id: kind.id,
    name: kind.sheet,
    says: kind.says,
    widths: [
      8,
      ...kind.asks.map((one) => one.width),
      7,
      22,
      ...kind.parts.flatMap(() => [10, 9, 7]),
      ...kind.dimensions.map(() => 11),
      8,
      10,
      12,
    ],
    lines: [
      line(
        ...[
          'Fitting',
          ...kind.asks.map((one) => one.heading),
          'Alike',
          'Check',
          ...kind.parts.flatMap((part) => [part.name, 'Length', 'Cut']),
          ...kind.dimensions.map((one) => one.heading),
          'Alone',
          'Area',
          'Not counted',
        ].map(heading),
      ),
      ...rows.map((row) => fittingLine(kind, layout, row)),
      line(
        words('Total'),
        ...kind.asks.map(() => null),
        figured(`SUM(${beside(layout.many)})`, count),
        null,
        ...layout.parts.flatMap((part) => [null, null, figured(`SUM(${beside(part.count)})`, count)]),
        ...Array.from({ length: dimensions }, () => null),
        figured(`SUM(${beside(layout.sheets)})`, count),
        figured(`SUM(${beside(layout.area)})`, squareFeet),
      ),
    ],
  });
}

export const kindTotalRow = totalRow;

function fittingLine(kind: Kind, layout: Layout, row: number): Line {
  const fill = (formula: string) =>
    formula.replace(/\{(\w+)\}/g, (_, key: string) => `${layout.letterOf(key)}${row}`);
  const { check: said, many } = layout;
  const first = layout.parts[0];
  if (!first) throw new Error(`${kind.sheet} has no part.`);
  const absent = missing(
    [`A${row}=""`, 'mark'],
    ...kind.asks.flatMap(({ key, heading: name, blank }) => {
      const isBlank = `${layout.letterOf(key)}${row}=""`;
      if (blank === true) return [];
      const condition = blank ? `AND(${fill(blank.unless)},${isBlank})` : isBlank;
      return [[condition, name.toLowerCase()] as const];
    }),
  );
  const isOn = (column: string) => `COUNT(${column}${row})=1`;
  const heldBy = ({ wide, long }: { readonly wide: string; readonly long: string }) => {
    const side = (one: string, other: string) =>
      `${wholeDown(`sheet_width/${one}${row}`)}*${wholeDown(`sheet_length/${other}${row}`)}`;
    return `MAX(${side(wide, long)},${side(long, wide)})`;
  };
  const isWhole = `AND(${absent}="",COUNTIF(A2:A${lastRow},A${row})<2)`;
  const partCells = layout.parts.flatMap(({ part, wide }, index) => {
    const any = (formula: string) =>
      part.many === '1' || part.many === '2' ? formula : `IF(${fill(part.many)}=0,"",${formula})`;
    // The first blank says in its own words why a fitting cannot be made; the others then stay blank.
    const quiet = (formula: string) =>
      index === 0 ? formula : `IF(ISERROR(${first.wide}${row}),"",${formula})`;
    const size = (formula: string) => `IF(A${row}="","",IF(${isWhole},${quiet(any(fill(formula)))},""))`;
    return [
      figured(size(part.wide), cutInches),
      figured(index === 0 ? `IF(ISERROR(${wide}${row}),"",${size(part.long)})` : size(part.long), cutInches),
      figured(
        `IF(IFERROR(${isOn(wide)},FALSE),IF(LEFT(${said}${row},4)="stop","",${fill(part.many)}*IF(${many}${row}="",1,${many}${row})),"")`,
        count,
      ),
    ];
  });
  const tooLarge = layout.parts.map((part) => `IF(${isOn(part.wide)},${heldBy(part)}=0,FALSE)`).join(',');
  return line(
    given({ asks: 'What mark goes on this fitting, such as E1?', mayBeBlank: true }),
    ...kind.asks.map(({ question, more = {} }) => given({ ...question, mayBeBlank: true }, more)),
    given(
      {
        asks: 'How many fittings are alike? Blank means one.',
        least: 1,
        most: 100,
        why: 'more than 100 alike are most likely a slip',
        usual: 1,
        mayBeBlank: true,
      },
      count,
    ),
    check(
      firstOf(
        [allBlank(row, ['A', ...kind.asks.map(({ key }) => layout.letterOf(key)), many]), '""'],
        [`${absent}<>""`, `"stop: still to fill in: "&${absent}`],
        [
          `COUNTIF(A2:A${lastRow},A${row})>1`,
          '"stop: another line has this mark too; give each its own, or say how many are alike"',
        ],
        [
          `ISERROR(${first.wide}${row})`,
          '"stop: it cannot be laid out with these sizes; its first blank says why"',
        ],
        [
          `OR(${tooLarge})`,
          '"stop: a blank is larger than the stock sheet; make the fitting of more pieces, or smaller"',
        ],
        ...(kind.looks ?? []).map(([condition, sentence]) => [fill(condition), `"${sentence}"`] as const),
      ),
    ),
    ...partCells,
    ...kind.dimensions.map(({ formula, more }) =>
      figured(
        `IF(A${row}="","",IF(ISERROR(${first.wide}${row}),"",IF(${isWhole},${fill(formula)},"")))`,
        more,
      ),
    ),
    figured(
      `IF(IFERROR(${isOn(first.count)},FALSE),${layout.parts.map((part) => `IF(${isOn(part.wide)},${wholeUp(`${part.count}${row}/${heldBy(part)}`)},0)`).join('+')},"")`,
      count,
    ),
    figured(
      `IF(IFERROR(${isOn(first.count)},FALSE),(${layout.parts.map((part) => `IF(${isOn(part.wide)},${part.count}${row}*${part.wide}${row}*${part.long}${row},0)`).join('+')})/144,"")`,
      squareFeet,
    ),
    figured(
      ifFilled(
        `${said}${row}`,
        `IF(LEFT(${said}${row},4)="stop",IF(A${row}="","an unmarked fitting",A${row}),"")`,
      ),
    ),
  );
}
