import { mkdir, rm, writeFile } from 'node:fs/promises';
import { manualFiles } from './manual/manual.ts';

/** Writes the generated part of the manual anew: one page for each trade function, and the list of sources. */
const docs = new URL('../docs/', import.meta.url);
await rm(new URL('functions/', docs), { recursive: true, force: true });
const files = manualFiles();
for (const [place, text] of files) {
  const file = new URL(place, docs);
  await mkdir(new URL('.', file), { recursive: true });
  await writeFile(file, text);
}
console.log(`${files.size} files of the manual written.`);
