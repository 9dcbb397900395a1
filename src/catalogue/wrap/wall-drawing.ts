import type { Drawing, Mark, Point } from '../drawing.ts';
import { figure } from '../say.ts';

const metal = 110;
const face = 250;
const [top, bottom] = [56, 136];

/** The wall of a duct cut across, air inside on the left, and the temperature on its way through it. */
export function wallDrawing(about: {
  readonly title: string;
  readonly describes: string;
  readonly inside: number;
  /** Of the metal, behind the film inside. */
  readonly metal: number;
  readonly surface: number;
  readonly around: number;
  readonly dewPoint: number | null;
  /** Under the wrap: its R or its thickness. */
  readonly wrap: string;
}): Drawing {
  const all = [
    about.inside,
    about.metal,
    about.surface,
    about.around,
    ...(about.dewPoint === null ? [] : [about.dewPoint]),
  ];
  const [coldest, hottest] = [Math.min(...all), Math.max(...all)];
  const y = (temperature: number) =>
    hottest - coldest < 1e-9
      ? (top + bottom) / 2
      : bottom - ((temperature - coldest) / (hottest - coldest)) * (bottom - top);
  const at = (x: number, temperature: number): Point => ({ x, y: y(temperature) });
  const label = (x: number, height: number, text: string, anchor: 'start' | 'middle' | 'end'): Mark => ({
    type: 'label',
    at: { x, y: height },
    text,
    anchor,
  });
  return {
    title: about.title,
    describes: about.describes,
    height: 196,
    marks: [
      {
        type: 'outline',
        closed: true,
        role: 'wrap',
        points: [
          { x: metal, y: 44 },
          { x: face, y: 44 },
          { x: face, y: 148 },
          { x: metal, y: 148 },
        ],
      },
      {
        type: 'outline',
        closed: false,
        role: 'metal',
        points: [
          { x: metal, y: 44 },
          { x: metal, y: 148 },
        ],
      },
      ...(about.dewPoint === null
        ? []
        : [
            {
              type: 'outline',
              closed: false,
              role: 'guide',
              points: [at(metal + 8, about.dewPoint), at(340, about.dewPoint)],
            } as const,
          ]),
      {
        type: 'outline',
        closed: false,
        role: 'cut',
        points: [
          at(20, about.inside),
          at(metal - 24, about.inside),
          at(metal, about.metal),
          at(face, about.surface),
          at(face + 24, about.around),
          at(340, about.around),
        ],
      },
      label(20, 30, `in the duct ${figure(about.inside, 1)} °F`, 'start'),
      label(340, 30, `around it ${figure(about.around, 1)} °F`, 'end'),
      label(20, 168, about.wrap, 'start'),
      label(340, 168, `face ${figure(about.surface, 1)} °F`, 'end'),
      ...(about.dewPoint === null
        ? []
        : [label(340, 188, `dew point ${figure(about.dewPoint, 1)} °F`, 'end')]),
    ],
  };
}
