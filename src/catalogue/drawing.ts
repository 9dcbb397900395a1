/** A drawing as data: shapes on a sheet 360 wide (text is 12 high there), y downward. Looks follow from roles. */
export interface Drawing {
  readonly title: string;
  /** One or two sentences for people who cannot see it, with the sizes in it. */
  readonly describes: string;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export const drawingWidth = 360;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a shape stands for. */
export type MarkRole = 'metal' | 'wrap' | 'lap' | 'seam' | 'bend' | 'cut' | 'tape' | 'fastener' | 'guide';

export type Mark =
  | {
      readonly type: 'outline';
      readonly points: readonly Point[];
      readonly closed: boolean;
      readonly role: MarkRole;
    }
  | { readonly type: 'circle'; readonly center: Point; readonly radius: number; readonly role: MarkRole }
  /** A ring between two circles. */
  | {
      readonly type: 'ring';
      readonly center: Point;
      readonly inner: number;
      readonly outer: number;
      readonly role: MarkRole;
    }
  | {
      readonly type: 'label';
      readonly at: Point;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
    }
  /** A measure between two points, with ticks, its text beside the middle. */
  | { readonly type: 'measure'; readonly from: Point; readonly to: Point; readonly text: string };
