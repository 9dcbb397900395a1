import type { Page } from 'playwright-core';

/** The walk from a finished job to a template and to the next job, with every press and every entry counted. Also walked to
 *  take the pictures of the guide. */
export async function templateScene(page: Page) {
  let steps = 0;
  const press = async (name: string | RegExp) => {
    steps += 1;
    await page.getByRole('button', { name }).click();
  };
  const fill = async (label: string | RegExp, text: string) => {
    steps += 1;
    await page.getByLabel(label, typeof label === 'string' ? { exact: true } : {}).fill(text);
  };
  const sheet = async (name: string) => {
    steps += 1;
    await page.locator('.sheet-list-one').filter({ hasText: name }).first().click();
    await page.getByRole('heading', { level: 1, name }).waitFor();
  };
  const cell = async (row: number, column: number) => {
    steps += 1;
    await page.locator(`[row-id="${row - 1}"] [col-id="c${column}"]`).click();
  };
  const pick = async (label: string, option: string) => {
    steps += 1;
    await page.getByLabel(label, { exact: true }).selectOption({ label: option });
  };
  const type = async (text: string) => {
    steps += 1;
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  const openTemplate = () => press('Template and worked examples');
  const dressed = async () => {
    const dress = page.locator('.cell-dress');
    if ((await dress.getAttribute('open')) !== null) return;
    steps += 1;
    await dress.locator('summary').click();
  };

  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  return {
    steps: () => steps,
    openTemplate,
    makeTemplate: async (name: string) => {
      await openTemplate();
      await fill('Name of the template', name);
      await press('Make the template');
      await page.locator('.header-title').filter({ hasText: name }).waitFor();
    },
    /** One more given, with a question and what helps to answer it. */
    askForTheCrew: async () => {
      await sheet('Job');
      await cell(2, 3);
      await dressed();
      await pick('Role', 'given: a person fills it in');
      await pick('Measures', 'a whole number of things');
      await fill('Asks', 'How many hands lift the trunk?');
      await fill('Least', '1');
      await fill('Most', '6');
      await fill('Usual value', '2');
      await fill('What helps to answer', 'Count who is there on the day it goes up.');
      await press('Keep the question');
      await cell(2, 3);
      await type('2');
    },
    writeCheck: async () => {
      await cell(2, 4);
      await dressed();
      await pick('Role', 'check: holds, look or stop');
      await fill('Stops when', 'D2<2');
      await fill('and says', 'a trunk is not lifted alone');
      await press('Write its formula');
      await page
        .getByRole('gridcell', { name: /^holds/ })
        .first()
        .waitFor();
    },
    lock: async () => {
      await openTemplate();
      await press('Lock the rest of Job');
      await press('Lock the rest of Blanks');
      await press('Lock the rest of Wrap');
      await press('Lock the rest of Seal and fasten');
    },
    /** As the job was built, and once more with a longer first piece. */
    recordExamples: async () => {
      const record = async (name: string, source: string) => {
        await fill('Cell of a result', 'Wrap!E2');
        await press('Add this cell');
        await fill('Name', name);
        await fill('Where the results are known from', source);
        await fill(/may differ by/, '0.01');
        await press('Record the example');
      };
      await record('As built at lot 7', 'measured at the bench');
      await page.getByText(/The example comes out as recorded\./).waitFor();
      await sheet('Pieces');
      await cell(2, 4);
      await type('120');
      await openTemplate();
      await record('With a first piece of 10 ft', 'worked by hand');
      await page.getByText(/All 2 examples come out as recorded\./).waitFor();
    },
    saveRevision: async (says: string) => {
      await fill('What is new in revision 1', says);
      await press('Save as revision 1');
      await page.getByText('Revision 1 is saved.').waitFor();
    },
    makeJob: async (title: string) => {
      await press('Files and shelf');
      await press(/Fill in a form for a job from Ranch trunk/);
      await fill('Title of the job', title);
      await press('Make the job');
      await page.locator('.header-title').filter({ hasText: title }).waitFor();
    },
  };
}
