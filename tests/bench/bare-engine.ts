import { tradeFunctions } from '../../src/catalogue/list.ts';
import { buildEngine, type EngineSheet } from '../../src/engine/formula-engine.ts';
import { insideFunction } from '../../src/engine/own-plugin.ts';
import { largeWorkbook } from './large-workbook.ts';

/** A worker that builds the outside engine alone with the large workbook, as soon as it is asked, and tells how long that
 *  took: the least that any calculator on it needs. */
const sheets = largeWorkbook().sheets.map(
  ({ name, rows }): EngineSheet => ({
    name,
    rows: rows.map((cells) => cells.map((cell) => cell?.content ?? null)),
  }),
);

addEventListener('message', () => {
  const start = performance.now();
  const engine = buildEngine(sheets, tradeFunctions.map(insideFunction), []);
  const took = performance.now() - start;
  engine.close();
  postMessage(took);
});
