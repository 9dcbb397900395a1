import { count, cutInches, figured, heading } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { kinds } from './kinds.ts';
import { layoutOf, linesOfKind } from './sheet.ts';

/** Every blank of every fitting, as it is gathered from the sheets: its cells by row. */
const sources = kinds.flatMap((kind) => {
  const layout = layoutOf(kind);
  const sheet = /^\w+$/.test(kind.sheet) ? kind.sheet : `'${kind.sheet}'`;
  return Array.from({ length: linesOfKind }, (_, index) => index + 2).flatMap((row) =>
    layout.parts.map(({ part, wide, long, count: many }) => ({
      name: `${kind.sheet}: ${part.name.toLowerCase()}`,
      mark: `${sheet}!A${row}`,
      wide: `${sheet}!${wide}${row}`,
      long: `${sheet}!${long}${row}`,
      many: `${sheet}!${many}${row}`,
    })),
  );
});

const last = sources.length + 1;

/** The blanks that there are, one below the other, though the fittings stand on sheets of their own. */
export const cutList: Form = form({
  id: 'cut-list',
  name: 'Cut list',
  says: 'Shear these blanks, then mark each out by the pattern that its own cell shows; nothing is to be filled in.',
  widths: [9, 28, 11, 11, 8, 4, 8, 9, 28, 11, 11, 8],
  lines: [
    line(
      ...['Fitting', 'Blank', 'Wide', 'Long', 'Cut'].map(heading),
      null,
      ...['Gathered', 'Fitting', 'Blank', 'Wide', 'Long', 'Cut'].map(heading),
    ),
    ...sources.map((source, index) => cutLine(source, index + 2)),
  ],
  blocks: { cut_list: `A1:E${last}`, cuts: `L2:L${last}` },
});

function cutLine(source: (typeof sources)[number], row: number): Line {
  const place = `MATCH(${row - 1},G2:G${last},0)`;
  const taken = (column: string) =>
    `IF(${row - 1}>MAX(G2:G${last}),"",INDEX(${column}2:${column}${last},${place}))`;
  const gathered = (formula: string) => `IF(G${row}="","",${formula})`;
  return line(
    figured(taken('H')),
    figured(taken('I')),
    figured(taken('J'), cutInches),
    figured(taken('K'), cutInches),
    figured(taken('L'), count),
    null,
    figured(`IF(COUNT(${source.many})=1,MAX(G$1:G${row - 1})+1,"")`, count),
    figured(gathered(source.mark)),
    figured(gathered(`"${source.name}"`)),
    figured(gathered(source.wide), cutInches),
    figured(gathered(source.long), cutInches),
    figured(gathered(source.many), count),
  );
}
