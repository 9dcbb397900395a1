/** Why the trade maths gives no figure for sizes that are each in range. Wording: `catalogue/wording.ts`. */
export type TradeFault =
  | { readonly code: 'needs_depth'; readonly shape: string }
  | {
      readonly code: 'no_published_row';
      readonly table: string;
      readonly got: number;
      readonly rows: readonly number[];
    };
