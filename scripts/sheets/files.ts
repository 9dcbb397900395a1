import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { writeLotTableFile } from '../../src/lots/file.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { demoJob } from './demo.ts';
import { fittings } from './fittings/template.ts';
import { insulationDemo } from './insulation/demo.ts';
import { insulation } from './insulation/template.ts';
import { leakageDemo } from './leakage/demo.ts';
import { leakage } from './leakage/template.ts';
import { larkspurLane } from './lots.ts';
import { offerJob } from './offer/demo.ts';
import { priceAndOffer } from './offer/template.ts';
import { practice } from './practice/template.ts';
import { rectTrunkDemo } from './rect-trunk/demo.ts';
import { rectTrunk } from './rect-trunk/template.ts';
import { returnPlenumDemo } from './return-plenum/demo.ts';
import { returnPlenum } from './return-plenum/template.ts';
import { roundTrunk } from './round-trunk/template.ts';
import { singleStorey } from './single-storey/template.ts';
import { townHouse } from './town-house/template.ts';

/** Every file of `sheets/`, by its name; workbooks with the values figured, so that a page can show them at once. */
export async function sheetFiles(): Promise<ReadonlyMap<string, string>> {
  const workbooks: readonly (readonly [string, Workbook])[] = [
    ['round-trunk.template.stretchout.json', roundTrunk],
    ['fittings.template.stretchout.json', fittings],
    ['insulation.template.stretchout.json', insulation],
    ['insulation.job.stretchout.json', insulationDemo()],
    ['leakage.template.stretchout.json', leakage],
    ['leakage.job.stretchout.json', leakageDemo()],
    ['return-plenum.template.stretchout.json', returnPlenum],
    ['return-plenum.job.stretchout.json', returnPlenumDemo()],
    ['rect-trunk.template.stretchout.json', rectTrunk],
    ['rect-trunk.job.stretchout.json', rectTrunkDemo()],
    ['single-storey.template.stretchout.json', singleStorey],
    ['town-house.template.stretchout.json', townHouse],
    ['price-and-offer.template.stretchout.json', priceAndOffer],
    ['price-and-offer.job.stretchout.json', offerJob()],
    ['practice.template.stretchout.json', practice],
    ['demo.job.stretchout.json', demoJob()],
  ];
  const files = new Map<string, string>();
  for (const [name, workbook] of workbooks) {
    const values = await figureWorkbook(workbook, createCalculator({ functions: tradeFunctions }));
    files.set(name, writeWorkbookFile({ workbook, values }));
  }
  files.set('larkspur-lane.lots.stretchout.json', writeLotTableFile(larkspurLane));
  return files;
}
