import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { sheetFiles } from './sheets/files.ts';

/** Writes the workbooks of `sheets/` anew from their descriptions. */
const folder = new URL('../sheets/', import.meta.url);
for (const [name, text] of await sheetFiles()) {
  const file = fileURLToPath(new URL(name, folder));
  await writeFile(file, text);
  console.log(`${file}: ${Math.round(text.length / 1024)} kB`);
}
