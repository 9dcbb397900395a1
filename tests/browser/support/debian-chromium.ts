import { existsSync } from 'node:fs';
import type { Candidate } from './candidate.ts';
import { run } from './run.ts';

/** Debian's own Chromium, installed for the whole system: only for root, who is asked nothing. */
export async function debianChromium(say: (line: string) => void): Promise<readonly Candidate[] | string> {
  if (!existsSync('/etc/debian_version')) return 'this system is not Debian, so apt-get was not tried';
  if (process.getuid?.() !== 0) {
    return 'this account is not root, so apt-get was not tried (root can run: apt-get install chromium)';
  }
  say('Browser: installing the chromium package of Debian by apt-get ...');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const fault =
    (await run('apt-get', ['update'], { env })) ??
    (await run('apt-get', ['install', '--yes', '--no-install-recommends', 'chromium'], { env }));
  return fault === null
    ? [{ path: '/usr/bin/chromium', env: {} }]
    : `apt-get could not install chromium: ${fault}`;
}
