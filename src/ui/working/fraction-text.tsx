/** A text with its fractions (`28 15⁄16″`) set as such. What is read out stays the same. */
export function FractionText({ text }: { readonly text: string }) {
  return text.split(fraction).map((part, index) => {
    const [numerator, denominator] = index % 2 === 1 ? part.split('⁄') : [];
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a text have nothing else to tell them apart
    return denominator === undefined ? part : <Fraction key={index} over={[numerator, denominator]} />;
  });
}

const fraction = /(\d+⁄\d+)/;

function Fraction({ over: [numerator, denominator] }: { readonly over: readonly (string | undefined)[] }) {
  return (
    <span className="tape-figure-fraction">
      <span className="tape-figure-numerator">{numerator}</span>
      <span className="tape-figure-bar">⁄</span>
      <span className="tape-figure-denominator">{denominator}</span>
    </span>
  );
}
