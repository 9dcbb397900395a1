import { useId } from 'react';

/** A line to write in, with its name above and what is refused below. */
export function Field({
  name,
  value,
  hint,
  fault,
  isLong,
  onChange,
}: {
  readonly name: string;
  readonly value: string;
  readonly hint?: string;
  readonly fault?: string | undefined;
  readonly isLong?: boolean;
  readonly onChange: (value: string) => void;
}) {
  const id = useId();
  const told = `${id}-fault`;
  const parts = {
    id,
    value,
    placeholder: hint,
    maxLength: 500,
    'aria-invalid': fault ? true : undefined,
    'aria-describedby': fault ? told : undefined,
  };
  return (
    <div className="template-field">
      <label htmlFor={id}>{name}</label>
      {isLong ? (
        <textarea {...parts} rows={2} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input {...parts} type="text" onChange={(event) => onChange(event.target.value)} />
      )}
      {fault ? (
        <p id={told} className="template-fault">
          {fault}
        </p>
      ) : null}
    </div>
  );
}
