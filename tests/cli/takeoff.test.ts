import { describe, expect, test } from 'vitest';
import { demo, demoData, demoText, fileWith, stretchout, timeout } from './run.ts';

describe('stretchout takeoff', { timeout }, () => {
  test('prints what to order for the demo, without the lines that need nothing', async () => {
    const { exit, out } = await stretchout('takeoff', demo);
    expect(exit).toBe(0);
    expect(out).toBe(
      [
        'To order for Larkspur Lane, lot 7',
        'from Job!A25:C49',
        '',
        '  6  sheets 48 × 120 in, each piece on its own  Sheet metal, 26 ga',
        '  2  sheets 48 × 120 in, each piece on its own  Sheet metal, 24 ga',
        '  1  rolls of 180 ft                            Joint tape',
        '  2  rolls of 150 ft                            Facing tape',
        '  1  boxes of 500                               Screws',
        '  1  boxes of 5000                              Staples',
        '  1  caps, of the sizes on Pieces               End caps',
        '  2  rolls 48 in × 50 ft                        R-8 wrap',
        '',
      ].join('\n'),
    );
  });

  test('has nothing to order for an empty template', async () => {
    const { exit, out } = await stretchout('takeoff', 'sheets/round-trunk.template.stretchout.json');
    expect(exit).toBe(0);
    expect(out).toContain('  nothing to order\n');
  });

  test('warns and fails while something says stop', async () => {
    const data = demoData();
    data.workbook.sheets[0].cells.B11.content = 10;
    const { exit, out } = await stretchout('takeoff', fileWith('stops.json', data));
    expect(exit).toBe(1);
    expect(out).toContain('  2  rolls 48 in × 50 ft');
    expect(out).toContain('7 cells of this workbook say stop. Do not order yet');
  });

  test('names the piece that the order is without', async () => {
    const data = demoData();
    delete data.workbook.sheets[1].cells.A2.content;
    delete data.workbook.sheets[1].cells.E3.content;
    const { exit, out } = await stretchout('takeoff', fileWith('short.json', data));
    expect(exit).toBe(1);
    expect(out).toContain('stop: the order is without an unmarked line, S2,');
  });

  test('says which quantity has no figure', async () => {
    const data = demoData();
    data.workbook.sheets[0].cells.B38.content = { formula: '80/0' };
    const { exit, out } = await stretchout('takeoff', fileWith('no-figure.json', data));
    expect(exit).toBe(1);
    expect(out).toMatch(/no figure +boxes of \d+ +Screws/);
    expect(out).toContain('  Screws: Something is divided by zero');
  });

  test('a workbook without an order says how to make one', async () => {
    const data = demoData();
    delete data.workbook.names.order;
    const { exit, error } = await stretchout('takeoff', fileWith('no-order.json', data));
    expect(exit).toBe(2);
    expect(error).toContain('no block of cells in it is named “order”');
  });

  test('refuses half a file with a reason, and a call without a file', async () => {
    const half = await stretchout('takeoff', fileWith('half-order.json', demoText().slice(0, 5000)));
    expect(half).toMatchObject({ exit: 2, out: '', error: expect.stringContaining('damaged or') });
    const none = await stretchout('takeoff');
    expect(none).toMatchObject({ exit: 2, out: '', error: expect.stringContaining('One file is wanted.') });
  });
});
