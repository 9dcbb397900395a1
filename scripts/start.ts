import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { ServeFault, serve } from './serve.ts';

const usualPort = 4173;

const usage = `npm start                  build the page, serve it on this computer, open the browser
npm start -- --port 5000   on this port and no other
npm start -- --no-open     leave the browser alone`;

const root = fileURLToPath(new URL('..', import.meta.url));

async function start(): Promise<void> {
  const asked = readFlags();
  try {
    await build({ root, logLevel: 'warn' });
  } catch (fault) {
    stop(`The page could not be built, so there is nothing to serve.\n${wording(fault)}`);
  }
  const served = await serve(
    `${root}/dist`,
    asked.port === null ? { from: usualPort } : { port: asked.port },
  ).catch((fault: unknown) => {
    if (fault instanceof ServeFault) return stop(fault.message);
    throw fault;
  });

  console.log(`Stretchout is at ${served.address}`);
  if (asked.port === null && served.port !== usualPort) {
    console.log(
      `Port ${usualPort} is taken, so this is another address. A browser keeps workbooks by address: ` +
        `those kept at http://localhost:${usualPort}/ are safe, but are not listed here.`,
    );
  }
  console.log('Ctrl+C stops it.');
  if (asked.open) openBrowser(served.address);

  let stopping = false;
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.on(signal, () => {
      if (stopping) return;
      stopping = true;
      served.close().then(() => {
        console.log('\nStopped.');
        process.exit(0);
      });
    });
  }
}

function readFlags(): { readonly port: number | null; readonly open: boolean } {
  const someoneWatches = process.stdout.isTTY === true && !process.env.CI;
  try {
    const { values } = parseArgs({
      options: {
        port: { type: 'string' },
        open: { type: 'boolean', default: someoneWatches },
        help: { type: 'boolean', default: false },
      },
      allowNegative: true,
    });
    if (values.help) {
      console.log(usage);
      process.exit(0);
    }
    if (values.port === undefined) return { port: null, open: values.open };
    const port = Number(values.port);
    if (!/^\d+$/.test(values.port) || port < 1 || port > 65_535) {
      stop(`--port is ${JSON.stringify(values.port)}; it has to be a whole number from 1 to 65535.`);
    }
    return { port, open: values.open };
  } catch (fault) {
    return stop(`${wording(fault)}\n\n${usage}`);
  }
}

/** Asks the desktop to show the address; a computer without a desktop or browser is left in peace. */
function openBrowser(address: string): void {
  const [command, ...leading] =
    process.platform === 'darwin'
      ? ['open']
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '']
        : ['xdg-open'];
  if (command === undefined) return;
  const opener = spawn(command, [...leading, address], { stdio: 'ignore', detached: true });
  opener.on('error', () => {});
  opener.unref();
}

function wording(fault: unknown): string {
  return fault instanceof Error ? fault.message : String(fault);
}

function stop(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

await start();
