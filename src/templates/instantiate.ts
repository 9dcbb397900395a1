import type { Workbook } from '../workbook/document.ts';

/** A new job from a template. It remembers which template and which revision it came from, and keeps its own copy of
 *  every cell, allowances included; the worked examples stay with the template that they guard. */
export function instantiate(
  template: Workbook,
  { id, title }: { readonly id: string; readonly title: string },
): Workbook {
  return {
    id,
    title,
    kind: 'job',
    template: template.template ?? { name: template.title, revision: 1 },
    sheets: template.sheets,
    names: template.names,
    examples: [],
  };
}
