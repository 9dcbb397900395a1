import type { Fahrenheit, ThermalResistance } from '../../base/quantity.ts';
import { type DuctFace, ductFaces, filmOf, heatFlow, type Surface, surfaces } from '../../trade/wrap/film.ts';
import { choice, optional, quantity } from '../argument.ts';
import type { SourceId } from '../sources.ts';
import type { Step } from '../working.ts';

export const aroundArgument = quantity('degF', {
  says: 'the temperature of the air around the duct',
  least: -40,
  most: 150,
  why: 'a dark attic can pass 140 °F, and no duct hangs where it is much hotter',
});

export const insideArgument = quantity('degF', {
  says: 'the temperature of the air in the duct',
  least: -40,
  most: 250,
  why: 'air in duct is not colder or hotter than that',
});

/** `most` is 1 where saturated air has an answer. */
export const humidityArgument = (most: number) =>
  quantity('percent', {
    says: 'the relative humidity of the air around the duct; 80 % is 0.8',
    least: 0.01,
    most,
    why:
      most < 1
        ? 'air is never quite dry, and in saturated air every colder face is wet; 80 % is written 0.8'
        : 'air is never quite dry and never more than saturated; 80 % is written 0.8',
  });

/** The film of still air on the outer face, by what that face is or as a figure of one’s own, and the film inside. */
export const filmArguments = {
  surface: optional(
    choice(surfaces, {
      says: 'what the outer face is: a dull jacket, foil that time has dulled, or bright foil',
    }),
    'bright foil',
    'of the three it sweats first, so nothing comes out too thin',
  ),
  face: optional(
    choice(ductFaces, { says: 'which face of the duct: its underside, a side or its top' }),
    'side',
    'of cold duct the underside needs less, and a top under bright foil far more: ask again for the face that matters',
  ),
  film: optional<ThermalResistance | null>(
    quantity('r', {
      says: 'the R of the outer air film, if you have a figure of your own; it takes the place of surface and face',
      least: 0.05,
      most: 5,
      why: 'wind leaves 0.17 and still air over bright foil 4.55',
    }),
    null,
    'it follows from the surface and the face',
  ),
  inner_film: optional(
    quantity('r', {
      says: 'the R of the air film inside the duct',
      least: 0,
      most: 2,
      why: 'moving air leaves about 0.37 and still air under 1',
    }),
    0,
    'without it one is on the safe side; a British guide has 0.37',
  ),
};

export interface OuterFilm {
  readonly r: ThermalResistance;
  readonly source: SourceId | null;
  readonly says: string;
}

export function outerFilmOf(given: {
  readonly around: Fahrenheit;
  readonly inside: Fahrenheit;
  readonly surface: Surface;
  readonly face: DuctFace;
  readonly film: ThermalResistance | null;
}): OuterFilm {
  const { around, inside, surface, face, film } = given;
  if (film !== null) return { r: film, source: null, says: 'your own figure' };
  const flow = heatFlow(face, inside < around);
  return {
    r: filmOf(surface, flow),
    source: surface === 'dull' ? 'film-state-code' : 'film-handbook-table',
    says: `${surface}, ${face}: heat goes ${flow}`,
  };
}

export function filmSteps(film: OuterFilm, inner: ThermalResistance): readonly Step[] {
  return [
    {
      label: 'Film on the outer face',
      sum: film.says,
      value: film.r,
      unit: 'r',
      ...(film.source === null ? {} : { source: film.source }),
    },
    ...(inner === 0
      ? []
      : [{ label: 'Film inside', sum: '', value: inner, unit: 'r', source: 'inner-film-guide' } as const]),
  ];
}
