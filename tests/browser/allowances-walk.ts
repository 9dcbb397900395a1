import type { Page } from 'playwright-core';

/** What the new wrap is called. */
export const triedName = 'R-6.8 wrap, 2 1/2 in';

/** The walk through a new wrap: each step is one press or one number typed. */
export function allowancesWalk(page: Page) {
  let steps = 0;
  const step = async (deed: Promise<unknown>) => {
    steps += 1;
    await deed;
  };
  const wrap = page.getByRole('region', { name: 'Wrap', exact: true });
  return {
    steps: () => steps,
    wrap,
    open: () => step(page.getByRole('button', { name: 'Allowances, side by side' }).click()),
    copy: () => step(wrap.getByRole('button', { name: 'Copy this wrap and change it' }).click()),
    name: () => step(wrap.getByRole('textbox', { name: 'Name of the copy' }).fill(triedName)),
    /** Of the copied wrap: each number as a tape or a label has it. */
    setNumbers: async () => {
      for (const [field, typed] of [
        ['Thickness', '2 1/2'],
        ['Installed', '1 7/8'],
        ['Label R', '8.2'],
        ['Installed R', '6.8'],
        ['Roll length', '60'],
        ['Lap of the wrap', '3'],
      ] as const) {
        await step(wrap.getByRole('textbox', { name: field, exact: true }).fill(typed));
      }
    },
    tryOnJob: () => step(wrap.getByRole('checkbox', { name: 'Try it on this job' }).check()),
    effect: page.getByRole('region', { name: 'What it does to this job' }),
    keep: () => step(page.getByRole('button', { name: 'Keep it' }).click()),
  };
}
