import { z } from 'zod';
import { longestLotName, longestRemark, mostLots, mostTypes } from './lot-table.ts';

/** The lot table file, version 1, as it stands on disk. Its house types are whole workbook files, which `workbook/file.ts`
 *  reads; nothing unknown is let in. */

const name = z.string().min(1).max(80);

const lot = z.strictObject({
  name: z.string().trim().min(1).max(longestLotName),
  type: name,
  options: z.record(name, name),
  overrides: z.record(z.string().min(4).max(120), z.union([z.number(), z.string().max(2000), z.boolean()])),
  remark: z.string().max(longestRemark).optional(),
});

export const storedLots = z.strictObject({
  id: name,
  title: z.string().min(1).max(120),
  rows: z.array(lot).max(mostLots),
});

export const lotTableFile = z.strictObject({
  stretchoutLots: z.number(),
  lots: storedLots,
  types: z.array(z.unknown()).max(mostTypes),
  /** The digest of the locked cells of each type, by its name and the id of the sheet. */
  seals: z.record(name, z.record(name, z.string().max(64))).optional(),
});

export type LotTableFile = z.infer<typeof lotTableFile>;
