import { scaleLinear } from 'd3-scale';

/** Where each bar begins from the left and how long it is; bars of figures below nothing run the other way. */
export function barSpans(
  values: readonly number[],
  width: number,
): readonly { readonly from: number; readonly length: number }[] {
  const figures = values.map((value) => (Number.isFinite(value) ? value : 0));
  const [least, most] = [Math.min(0, ...figures), Math.max(0, ...figures)];
  const scale = scaleLinear([least, most > least ? most : least + 1], [0, width]);
  return figures.map((value) => ({
    from: scale(Math.min(0, value)),
    length: scale(Math.max(0, value)) - scale(Math.min(0, value)),
  }));
}
