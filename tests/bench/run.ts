import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { cpus, totalmem } from 'node:os';

import { z } from 'zod';

/** The benches by name: the file beside this one, and the function in it that measures. */
const benches = [
  { name: 'engine', file: 'engine.ts', measure: 'benchEngine' },
  { name: 'lots', file: 'lots.ts', measure: 'benchLots' },
  { name: 'page', file: 'page.ts', measure: 'benchPage' },
] as const;

const figuresSchema = z.array(z.object({ name: z.string(), value: z.number(), unit: z.string() }));
type Figures = z.infer<typeof figuresSchema>;

const cache = new URL('../../.cache/', import.meta.url);

/** Names on the command line choose benches: `npm run bench -- engine`. */
async function bench(chosen: readonly string[]): Promise<void> {
  const unknown = chosen.filter((name) => !benches.some((each) => each.name === name));
  if (unknown.length > 0) {
    console.error(
      `No bench is called ${unknown.join(', ')}. There are: ${benches.map((each) => each.name).join(', ')}.`,
    );
    process.exitCode = 1;
    return;
  }
  const measured: Record<string, Figures> = {};
  for (const { name, file, measure } of benches) {
    if (chosen.length > 0 && !chosen.includes(name)) continue;
    const place = new URL(file, import.meta.url);
    if (!existsSync(place)) {
      console.log(`${name}: not measured, since tests/bench/${file} is not there.\n`);
      continue;
    }
    console.log(`${name}: measuring ...`);
    const module: Readonly<Record<string, unknown>> = await import(place.href);
    const run = module[measure];
    if (typeof run !== 'function') throw new Error(`tests/bench/${file} has to export ${measure}().`);
    const figures = figuresSchema.parse(await run());
    measured[name] = figures;
    console.log(`${table(figures)}\n`);
  }
  const machine = {
    node: process.version,
    system: `${process.platform} ${process.arch}`,
    processor: `${cpus().length} x ${cpus()[0]?.model ?? 'unknown'}`,
    memoryGb: Math.round(totalmem() / 2 ** 30),
  };
  await mkdir(cache, { recursive: true });
  await writeFile(new URL('bench.json', cache), `${JSON.stringify({ machine, measured }, null, 2)}\n`);
  console.log(`On ${machine.processor}, Node ${machine.node}. Written to .cache/bench.json.`);
}

/** One line for each figure: name, value, unit, the values set flush right. */
function table(figures: Figures): string {
  const rows = figures.map(({ name, value, unit }) => ({ name, value: readable(value), unit }));
  const nameWidth = Math.max(0, ...rows.map((row) => row.name.length));
  const valueWidth = Math.max(0, ...rows.map((row) => row.value.length));
  return rows
    .map((row) => `  ${row.name.padEnd(nameWidth)}  ${row.value.padStart(valueWidth)} ${row.unit}`)
    .join('\n');
}

/** Three digits that mean something, whole numbers in full. */
function readable(value: number): string {
  const decimals = Number.isInteger(value) || Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2;
  return value.toLocaleString('en-US', { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
}

await bench(process.argv.slice(2));
