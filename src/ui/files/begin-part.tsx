import { useEffect, useState } from 'react';
import { instantiate } from '../../templates/instantiate.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import type { Desk, DeskKeeper } from '../desk.ts';
import { type KnownTemplate, shelfTemplates } from '../template/known-templates.ts';
import { loadTemplate, newEmptyWorkbook, shippedTemplates } from './new-workbook.ts';

/** What a new workbook can begin with: a template that came with the program, one of the shelf, or nothing. */
export function BeginPart({
  keeper,
  desk,
  onBegin,
  onForm,
  onSay,
}: {
  readonly keeper: DeskKeeper;
  readonly desk: Desk;
  readonly onBegin: (kept: KeptWorkbook) => void;
  readonly onForm: (template: KeptWorkbook) => void;
  readonly onSay: (sentence: string) => void;
}) {
  const [own, setOwn] = useState<readonly KnownTemplate[]>([]);

  useEffect(() => {
    let isWanted = true;
    shelfTemplates(keeper, desk).then(
      (found) => {
        if (isWanted) setOwn(found);
      },
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [keeper, desk]);

  async function fetched(
    load: () => Promise<KeptWorkbook>,
    then: (kept: KeptWorkbook) => void,
  ): Promise<void> {
    const kept = await load().catch(() => null);
    if (kept) then(kept);
    else onSay('The template could not be fetched. Look whether this computer is connected, and try again.');
  }

  function straight({ workbook, values }: KeptWorkbook): void {
    onBegin({ workbook: instantiate(workbook, { id: 'new', title: 'New job' }), values });
  }

  return (
    <section aria-labelledby="files-begin">
      <h2 id="files-begin">Begin a new one</h2>
      <p>
        The open workbook stays on the shelf. A form asks all on one page; in the grid one goes sheet by
        sheet.
      </p>
      <ul className="files-templates">
        {own.map(({ kept, shelfId }) => (
          <Offer
            key={shelfId}
            name={kept.workbook.title}
            says={ownWords(kept)}
            onForm={() => onForm(kept)}
            onGrid={() => straight(kept)}
          />
        ))}
        {shippedTemplates.map((template) => (
          <Offer
            key={template.name}
            name={template.name}
            says={template.says}
            onForm={() => fetched(() => loadTemplate(template), onForm)}
            onGrid={() => fetched(() => loadTemplate(template), straight)}
          />
        ))}
      </ul>
      <div className="files-deeds">
        <button type="button" onClick={() => onBegin(newEmptyWorkbook())}>
          New empty workbook
        </button>
      </div>
    </section>
  );
}

function Offer({
  name,
  says,
  onForm,
  onGrid,
}: {
  readonly name: string;
  readonly says: string;
  readonly onForm: () => void;
  readonly onGrid: () => void;
}) {
  return (
    <li>
      <span>
        <strong>{name}</strong>
        <small>{says}</small>
      </span>
      <span className="files-deeds">
        <button type="button" onClick={onForm}>
          Fill in a form <span className="visually-hidden">for a job from {name}</span>
        </button>
        <button type="button" onClick={onGrid}>
          <span className="visually-hidden">New job from {name}. </span>Straight into the grid
        </button>
      </span>
    </li>
  );
}

function ownWords({ workbook: { template, revisions } }: KeptWorkbook): string {
  const last = revisions?.at(-1);
  if (!template) return 'on the shelf; no revision of it is saved yet';
  return `on the shelf, revision ${template.revision}${last ? `: ${last.says}` : ''}`;
}
