import { fill } from '../../src/templates/fill.ts';
import { instantiate } from '../../src/templates/instantiate.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';

/** A job of the invented scenario, made from a template and filled in. */
export function demoOf(
  template: Workbook,
  about: { readonly id: string; readonly title: string; readonly answers: WorkedExample['given'] },
): Workbook {
  const { id, title, answers } = about;
  const filled = fill(instantiate(template, { id, title }), answers);
  if (!filled.ok) throw new Error(`The template has no given at ${filled.fault.place}.`);
  return filled.value;
}

/** Who makes the invented jobs, for the head of a Job sheet. */
export function demoHead(title: string, address: string): WorkedExample['given'] {
  return {
    'Job!B2': title,
    'Job!B3': address,
    'Job!B4': 'Tinker’s Yard Duct Shop',
    'Job!B5': '12 May',
    'Job!B6': 'Wren',
  };
}

/** The lines of a table; the first stands in row `first`. */
export function linesOf(
  sheet: string,
  lines: readonly WorkedExample['given'][],
  first = 2,
): WorkedExample['given'] {
  return Object.fromEntries(
    lines.flatMap((one, index) =>
      Object.entries(one).map(([column, value]) => [`${sheet}!${column}${index + first}`, value]),
    ),
  );
}
