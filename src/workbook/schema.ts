import { z } from 'zod';
import { type Unit, unitNames } from '../base/unit.ts';
import { shades } from './document.ts';

/** The workbook file, version 1, as it stands on disk. Everything that crosses the edge passes here and is read once;
 *  nothing unknown is let in. Cells stand by address, so that a file reads and compares well. */

const shortText = z.string().max(500);
const name = z.string().min(1).max(80);
const plain = z.union([z.number(), z.string().max(10_000), z.boolean()]);
const address = z.string().regex(/^[A-Z]{1,2}[1-9][0-9]{0,4}$/);
const range = z.string().regex(/^[A-Z]{1,2}[1-9][0-9]{0,4}(:[A-Z]{1,2}[1-9][0-9]{0,4})?$/);
const placed = z.string().min(4).max(120);

const question = z.strictObject({
  asks: shortText,
  least: z.number().optional(),
  most: z.number().optional(),
  why: shortText.optional(),
  choices: z.array(name).max(200).optional(),
  usual: plain.optional(),
  mayBeBlank: z.boolean().optional(),
  help: z.string().max(2000).optional(),
});

const format = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('tape'),
    denominator: z.union([1, 2, 4, 8, 16, 32, 64].map((one) => z.literal(one))),
    round: z.enum(['up', 'nearest']),
    feet: z.boolean(),
  }),
  z.strictObject({ type: z.literal('decimal'), places: z.int().min(0).max(9) }),
  z.strictObject({ type: z.literal('percent'), places: z.int().min(0).max(6) }),
  z.strictObject({ type: z.literal('millimetres'), places: z.int().min(0).max(3) }),
  z.strictObject({ type: z.literal('metres'), places: z.int().min(0).max(6) }),
]);

export const storedCell = z.strictObject({
  content: z.union([plain, z.strictObject({ formula: z.string().max(8192) })]).optional(),
  typed: shortText.optional(),
  role: z.enum(['given', 'figured', 'check', 'text', 'heading']),
  unit: z.enum(unitNames as [Unit, ...Unit[]]).optional(), // the list is never empty
  format: format.optional(),
  question: question.optional(),
  note: z.string().max(2000).optional(),
  style: z
    .strictObject({
      bold: z.literal(true).optional(),
      align: z.enum(['left', 'middle', 'right']).optional(),
      wraps: z.literal(true).optional(),
      shade: z.enum(shades).optional(),
    })
    .optional(),
  across: z.int().min(2).max(702).optional(),
  locked: z.literal(true).optional(),
});

const sheetWithoutCells = {
  id: name,
  name: z.string().regex(/^[^'![\]:*?/\\]{1,60}$/),
  says: shortText,
  columns: z
    .array(z.strictObject({ width: z.number().min(2).max(120), hidden: z.literal(true).optional() }))
    .max(702),
  hiddenRows: z.array(z.int().min(0).max(99_999)).max(100_000).optional(),
  frozen: z.strictObject({ rows: z.int().min(0).max(12), columns: z.int().min(0).max(6) }).optional(),
};

const workedExample = z.strictObject({
  name: shortText,
  source: shortText,
  given: z.record(placed, plain),
  gives: z.record(
    placed,
    z.strictObject({ value: z.union([z.number(), z.string()]), tolerance: z.number().positive().optional() }),
  ),
});

const houseType = z.strictObject({
  options: z
    .array(
      z.strictObject({
        name,
        choices: z.array(z.strictObject({ name, sets: z.record(placed, plain) })).max(50),
        usual: name,
      }),
    )
    .max(50),
  varies: z.array(placed).max(100),
  lotName: placed.optional(),
  results: z.array(z.strictObject({ name, place: placed })).max(100),
});

const revision = z.strictObject({ revision: z.int().min(1), says: shortText, despite: shortText.optional() });

function workbookOf<Cells extends z.ZodRawShape>(cells: Cells) {
  return z.strictObject({
    id: name,
    title: z.string().max(120),
    kind: z.enum(['job', 'template', 'allowances']),
    template: z.strictObject({ name, revision: z.int().min(1) }).optional(),
    revisions: z.array(revision).max(1000).optional(),
    house: houseType.optional(),
    locksOff: z.literal(true).optional(),
    sheets: z
      .array(z.strictObject({ ...sheetWithoutCells, ...cells }))
      .min(1)
      .max(200),
    names: z.record(name, z.strictObject({ sheet: name, range })),
    examples: z.array(workedExample).max(500),
  });
}

export const storedWorkbook = workbookOf({ cells: z.record(address, storedCell) });

/** A value as last figured: plain, or a fault. Kept beside the workbook for the first paint, never trusted after it. */
export const storedValue = z.union([
  z.number(),
  z.string().max(32_767),
  z.boolean(),
  z.null(),
  z.strictObject({
    fault: z.string().max(40),
    sentence: z.string().max(2000),
    bornAt: placed.optional(),
    ring: z.array(placed).max(1000).readonly().optional(),
  }),
]);

export const storedValues = z.record(name, z.record(address, storedValue));

export const workbookFile = z.strictObject({
  stretchout: z.literal(1),
  /** The digest of the locked cells of each sheet, by its id; of a job with locks only. */
  seals: z.record(name, z.string().max(64)).optional(),
  workbook: storedWorkbook,
  values: storedValues,
});

/** The workbook as a record of a database, where each row is a text: many small objects take a database long to read.
 *  `record.ts` looks at the cells. */
export const workbookRecord = z.strictObject({
  stretchout: z.literal(1),
  workbook: workbookOf({ rows: z.array(z.string()).max(100_000) }),
  values: z.map(name, z.unknown()),
});

export type WorkbookRecord = z.infer<typeof workbookRecord>;
export type StoredWorkbook = z.infer<typeof storedWorkbook>;
export type WorkbookFile = z.infer<typeof workbookFile>;
