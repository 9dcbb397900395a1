import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { buildParserFile } from '@lezer/generator';

const folder = fileURLToPath(new URL('../src/formula/', import.meta.url));

/** The files that belong to the grammar of formulas, by name. A warning of the generator is a fault. */
export async function grammarFiles(): Promise<{ readonly [file: string]: string }> {
  const { parser, terms } = buildParserFile(await readFile(`${folder}formula.grammar`, 'utf8'), {
    fileName: 'formula.grammar',
    moduleStyle: 'es',
    warn: (message) => {
      throw new Error(message);
    },
  });
  return { 'parser.js': parser, 'parser.terms.js': terms };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [file, text] of Object.entries(await grammarFiles())) await writeFile(folder + file, text);
}
