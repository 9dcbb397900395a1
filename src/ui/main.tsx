import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { z } from 'zod';
import { readWorkbookFile } from '../workbook/file.ts';
import { App } from './app.tsx';
import { createDeskKeeper } from './desk.ts';
import { fetchTheRest } from './later.tsx';
import { NoStorage } from './no-storage.tsx';
import { pageLetters } from './theme/page-letters.ts';
import './theme/base.css';
import './app.css';

// The page's policy forbids code made at run time; without this zod would try it once and be refused.
z.config({ jitless: true });

/** The demo job of a new browser. It is our own file, so a refusal is a bug. */
async function demoJob() {
  const { default: text } = await import('../../sheets/demo.job.stretchout.json?raw');
  const kept = readWorkbookFile(text);
  if (!kept.ok) throw new Error(`The demo job cannot be read: ${JSON.stringify(kept.fault)}`);
  return kept.value;
}

const page = document.getElementById('page');
if (!page) throw new Error('The page has no element to stand in.');
const root = createRoot(page);
// What is not needed for the first picture waits until it stands.
let afterFirstPaint = () => {};
const mayLoad = new Promise<void>((resolve) => {
  afterFirstPaint = () => requestAnimationFrame(() => setTimeout(resolve, 0));
});

Promise.all([createDeskKeeper(demoJob, mayLoad), pageLetters()]).then(
  ([keeper]) => {
    root.render(
      <StrictMode>
        <App keeper={keeper} />
      </StrictMode>,
    );
    requestAnimationFrame(afterFirstPaint);
    // Nor does the rest of the page take time from the first figures.
    keeper.getDesk().session.settled().then(fetchTheRest);
  },
  (fault: unknown) => root.render(<NoStorage reason={fault instanceof Error ? fault.message : ''} />),
);
