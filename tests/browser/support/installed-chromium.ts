import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { Candidate } from './candidate.ts';

/** Chromium, Chrome and Edge where systems usually put them; on Linux also along the PATH. */
export async function installedChromium(): Promise<readonly Candidate[] | string> {
  const found = [...new Set(usualPlaces())].filter((path) => existsSync(path));
  return found.length > 0
    ? found.map((path) => ({ path, env: {} }))
    : 'no Chromium, Chrome or Edge is installed in the usual places of this system';
}

function usualPlaces(): readonly string[] {
  switch (process.platform) {
    case 'darwin':
      return ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
        ['Chromium', 'Google Chrome', 'Microsoft Edge'].map((name) =>
          join(folder, `${name}.app`, 'Contents', 'MacOS', name),
        ),
      );
    case 'win32':
      return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
        .filter((folder) => folder !== undefined)
        .flatMap((folder) => [
          join(folder, 'Chromium', 'Application', 'chrome.exe'),
          join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
          join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
        ]);
    default: {
      const names = [
        'chromium',
        'chromium-browser',
        'google-chrome',
        'google-chrome-stable',
        'microsoft-edge',
        'microsoft-edge-stable',
      ];
      const folders = [
        ...(process.env.PATH ?? '').split(delimiter),
        '/usr/bin',
        '/usr/local/bin',
        '/snap/bin',
      ];
      return [
        ...folders
          .filter((folder) => folder !== '')
          .flatMap((folder) => names.map((name) => join(folder, name))),
        '/opt/google/chrome/chrome',
        '/opt/microsoft/msedge/msedge',
      ];
    }
  }
}
