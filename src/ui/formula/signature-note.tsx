import type { SignatureHelp } from '../../formula/signature-help.ts';
import { aboutArgument } from './known-words.ts';

/** How the function at the caret is called, and what may stand where the caret is. */
export function SignatureNote({ help }: { readonly help: SignatureHelp }) {
  const argument = help.arguments[help.active];
  return (
    <>
      <p className="signature-call">
        <span className="formula-function">{help.name}</span>
        {'('}
        {help.arguments.map(({ name, optional }, index) => (
          <span key={name}>
            {index > 0 ? ', ' : ''}
            {index === help.active ? <strong>{name}</strong> : name}
            {optional ? <span className="formula-sign">?</span> : ''}
          </span>
        ))}
        {help.repeats > 0 ? ', …' : ''})
      </p>
      {argument ? (
        <ArgumentHelp name={help.name} argument={argument} />
      ) : (
        <p>
          {help.arguments.length === 0
            ? `${help.says} Nothing goes between the brackets.`
            : 'Nothing more goes in here.'}
        </p>
      )}
    </>
  );
}

function ArgumentHelp({
  name,
  argument,
}: {
  readonly name: string;
  readonly argument: SignatureHelp['arguments'][number];
}) {
  const { says, usually } = aboutArgument(name, argument.name);
  return (
    <p>
      <strong>{argument.name}</strong>: {says ? `${says}; ` : ''}
      {argument.allows}.{argument.optional ? ` May be left out${usually ? `: usually ${usually}` : ''}.` : ''}
    </p>
  );
}
