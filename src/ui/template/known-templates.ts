import type { Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { readWorkbookFile } from '../../workbook/file.ts';
import type { Desk, DeskKeeper } from '../desk.ts';
import { shippedTemplates } from '../files/new-workbook.ts';

/** A template that is at hand, and where it stands. */
export interface KnownTemplate {
  readonly kept: KeptWorkbook;
  /** Its id on the shelf; null where it came with the program. */
  readonly shelfId: string | null;
}

const read = new Map<string, Promise<KeptWorkbook | null>>();

/** Every template of the shelf, newest first; each entry is read once for each of its states. */
export async function shelfTemplates(keeper: DeskKeeper, desk: Desk): Promise<readonly KnownTemplate[]> {
  const found: KnownTemplate[] = [];
  for (const { id, at, isTemplate } of desk.shelf) {
    if (!isTemplate) continue;
    const key = `${id} ${at}`;
    const reading =
      read.get(key) ??
      keeper.read(id).then(
        (kept) => (kept.ok && kept.value.workbook.kind === 'template' ? kept.value : null),
        () => null,
      );
    read.set(key, reading);
    const kept = await reading;
    if (kept) found.push({ kept, shelfId: id });
  }
  return found;
}

async function shippedNamed(name: string): Promise<KeptWorkbook | null> {
  const shipped = shippedTemplates.find((one) => one.name === name);
  if (!shipped) return null;
  const loaded = await shipped.load().catch(() => null);
  const kept = loaded ? readWorkbookFile(loaded.default) : null;
  return kept?.ok ? kept.value : null;
}

/** The newest revision of a job's template that is at hand, where it is newer than the job's own; and the job's own
 *  revision, where that is at hand as well. */
export async function newerTemplate(
  keeper: DeskKeeper,
  desk: Desk,
  job: Workbook,
): Promise<{ readonly newer: Workbook; readonly older: Workbook | null } | null> {
  const { template } = job;
  if (job.kind !== 'job' || !template) return null;
  const shipped = await shippedNamed(template.name);
  const known = [
    ...(await shelfTemplates(keeper, desk)).map(({ kept }) => kept.workbook),
    ...(shipped ? [shipped.workbook] : []),
  ].filter((one) => one.kind === 'template' && one.template?.name === template.name);
  const [newest] = [...known].sort((one, other) => revisionOf(other) - revisionOf(one));
  if (!newest || revisionOf(newest) <= template.revision) return null;
  return { newer: newest, older: known.find((one) => revisionOf(one) === template.revision) ?? null };
}

function revisionOf({ template }: Workbook): number {
  return template?.revision ?? 1;
}
