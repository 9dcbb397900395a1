import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Candidate } from './candidate.ts';
import { run } from './run.ts';

/** The last release that still allows the oldest Node that we do. */
const version = '147.0.0';

const cache = fileURLToPath(new URL('../../../.cache/browser', import.meta.url));
const home = join(cache, `chromium-${version}`);

/** Ours, because the package's own list names fixed folders outside the project. Without a font the browser ends. */
const fontList = join(home, 'fonts.conf');
const fontListWords = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(home, 'fonts')}</dir>
  <cachedir>${join(home, 'fonts-cache')}</cachedir>
</fontconfig>
`;

/** A Chromium brought by npm into the project's cache, with the libraries and fonts that it needs: 64-bit Linux only. */
export async function packagedChromium(say: (line: string) => void): Promise<readonly Candidate[] | string> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    return 'the package @sparticuz/chromium is for 64-bit Intel and AMD Linux only';
  }
  if (!existsSync(home)) {
    say(
      `Browser: bringing @sparticuz/chromium ${version} by npm into .cache/browser (about 70 MB, once) ...`,
    );
    const fault = await bring();
    if (fault !== null) return `the package @sparticuz/chromium could not be brought: ${fault}`;
  }
  await writeFile(fontList, fontListWords);
  return [
    {
      path: join(home, 'chromium'),
      env: {
        LD_LIBRARY_PATH: [join(home, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH ?? '']
          .filter(Boolean)
          .join(':'),
        FONTCONFIG_FILE: fontList,
      },
    },
  ];
}

/** Fetches and unpacks; the finished folder appears all at once, so an interrupted run leaves no half browser. */
async function bring(): Promise<string | null> {
  const unpacking = join(cache, `unpacking-${process.pid}`);
  await mkdir(unpacking, { recursive: true });
  try {
    const fetched = await run('npm', [
      'install',
      '--no-save',
      '--no-package-lock',
      '--no-audit',
      '--no-fund',
      '--prefix',
      cache,
      `@sparticuz/chromium@${version}`,
    ]);
    if (fetched !== null) return fetched;
    const unpacked = await run(
      process.execPath,
      [
        '--input-type=module',
        '--eval',
        "const { default: chromium } = await import('@sparticuz/chromium'); await chromium.executablePath();",
      ],
      {
        cwd: cache,
        // It unpacks to the folder for temporary files, and its own libraries only where it takes itself to be hosted.
        env: { TMPDIR: unpacking, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x' },
      },
    );
    if (unpacked !== null) return unpacked;
    await rename(unpacking, home);
    await rm(join(cache, 'node_modules'), { recursive: true, force: true });
    return null;
  } finally {
    await rm(unpacking, { recursive: true, force: true });
  }
}
