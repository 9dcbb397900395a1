import type { Caution } from '../../catalogue/working.ts';

/** What to mind at the work, then what to look at in these very numbers. Each sentence once. */
export function CallCautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  const once = [...new Map(cautions.map((caution) => [caution.sentence, caution])).values()];
  const care = once.filter((caution) => caution.level === 'care');
  const look = once.filter((caution) => caution.level === 'look');
  return (
    <div className="cautions">
      {care.length > 0 ? (
        <div className="caution">
          <p className="caution-word">Take care</p>
          {care.map(({ sentence }) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      ) : null}
      {look.map(({ sentence }) => (
        <div className="caution caution-look" key={sentence}>
          <p>
            <span className="caution-sign" aria-hidden="true">
              !
            </span>
            <strong>Look: </strong>
            {sentence}
          </p>
        </div>
      ))}
    </div>
  );
}
