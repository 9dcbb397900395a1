import type { TestProject } from 'vitest/node';
import { openSite, type Site } from './site.ts';

declare module 'vitest' {
  interface ProvidedContext {
    readonly site: Site;
  }
}

/** Once before the first browser test; gives back what ends it all. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { site, close } = await openSite();
  project.provide('site', site);
  return close;
}
