import { chromium, type LaunchOptions } from 'playwright-core';
import type { Candidate, Way } from './candidate.ts';
import { debianChromium } from './debian-chromium.ts';
import { installedChromium } from './installed-chromium.ts';
import { packagedChromium } from './packaged-chromium.ts';

/** A Chromium that has been started once and answered with its version. Plain data: it goes to test processes. */
export interface Chromium extends Candidate {
  readonly version: string;
}

const ways = {
  installed: installedChromium,
  package: packagedChromium,
  debian: debianChromium,
} as const satisfies Record<string, Way>;

/** Quiet, offline and without a sandbox, which a container's root user does not have. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export function launchOptions(found: Candidate): LaunchOptions {
  return { executablePath: found.path, args: flags, env: { ...process.env, ...found.env } };
}

/**
 * The browser for the tests: `$CHROMIUM` (a path) and nothing else where it is set; else one that is installed; else
 * one brought from the package registry; else Debian's own. `$STRETCHOUT_BROWSER` (`installed`, `package` or `debian`)
 * allows one of these ways only. Throws a sentence when there is none: a missing browser never skips a test.
 */
export async function findChromium(say: (line: string) => void = console.log): Promise<Chromium> {
  const only = process.env.STRETCHOUT_BROWSER;
  const named = process.env.CHROMIUM;
  if (only) {
    const way = Object.entries(ways).find(([name]) => name === only)?.[1];
    if (way === undefined) {
      throw new Error(
        `STRETCHOUT_BROWSER is ${JSON.stringify(only)}; it may be ${Object.keys(ways).join(', ')}, or unset.`,
      );
    }
    return firstThatStarts([way], say);
  }
  if (named) {
    const started = await start({ path: named, env: {} });
    if (typeof started === 'string') {
      throw new Error(`CHROMIUM names a browser that does not start. Correct it or unset it.\n${started}`);
    }
    return report(started, say);
  }
  return firstThatStarts(Object.values(ways), say);
}

async function firstThatStarts(allowed: readonly Way[], say: (line: string) => void): Promise<Chromium> {
  const reasons: string[] = [];
  for (const way of allowed) {
    const candidates = await way(say);
    if (typeof candidates === 'string') {
      reasons.push(candidates);
      continue;
    }
    for (const candidate of candidates) {
      const started = await start(candidate);
      if (typeof started !== 'string') return report(started, say);
      say(`Browser: ${started}`);
      reasons.push(started);
    }
  }
  throw new Error(
    [
      'The browser tests need a Chromium and found none that starts:',
      ...reasons.map((reason) => `- ${reason}`),
      'Install Chromium, Chrome or Edge, or set CHROMIUM to the path of one.',
    ].join('\n'),
  );
}

/** The candidate with its version, or the sentence why it does not start. */
async function start(candidate: Candidate): Promise<Chromium | string> {
  try {
    const browser = await chromium.launch({ ...launchOptions(candidate), timeout: 60_000 });
    const version = browser.version();
    await browser.close();
    return { ...candidate, version };
  } catch (fault) {
    return `${candidate.path} does not start: ${lastWords(fault)}`;
  }
}

/** What the browser itself said before it ended, else the first line of the fault. */
function lastWords(fault: unknown): string {
  const lines = (fault instanceof Error ? fault.message : String(fault)).split('\n');
  return (lines.find((line) => line.includes('[err]')) ?? lines[0] ?? '').replace(/^.*\[err\]\s*/, '').trim();
}

function report(found: Chromium, say: (line: string) => void): Chromium {
  say(`Browser: Chromium ${found.version} at ${found.path}`);
  return found;
}
