/** Whether one cell of a newer revision is taken. */
export function TakeTick({
  place,
  isTaken,
  onTurn,
}: {
  readonly place: string;
  readonly isTaken: boolean;
  readonly onTurn: (place: string) => void;
}) {
  return (
    <input type="checkbox" aria-label={`Take ${place}`} checked={isTaken} onChange={() => onTurn(place)} />
  );
}
