import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** Holds the page, or the part of it that a selector names, against the accessibility rules of axe-core. */
export async function expectAccessible(page: Page, within = 'html'): Promise<void> {
  // Evaluated rather than added as a script, which the page's policy would rightly stop.
  await page.evaluate(axe.source);
  const results = await page.evaluate((part) => window.axe.run(part), within);
  const violations = results.violations.flatMap((rule) =>
    rule.nodes.map(
      (node) => `${rule.id} (${rule.impact}): ${rule.help}\n  at ${node.target.join(' ')}\n  ${node.html}`,
    ),
  );
  if (violations.length > 0) {
    throw new Error(['The page breaks rules of accessibility:', ...violations].join('\n'));
  }
}

declare global {
  interface Window {
    readonly axe: typeof axe;
  }
}
