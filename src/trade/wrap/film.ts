import { type ThermalResistance, thermalResistance } from '../../base/quantity.ts';

/** What the outer face of the wrap is: a dull jacket (emittance 0.9), foil that has dulled (0.2), bright foil (0.05). */
export const surfaces = ['dull', 'dulled foil', 'bright foil'] as const;
export type Surface = (typeof surfaces)[number];

export const ductFaces = ['underside', 'side', 'top'] as const;
export type DuctFace = (typeof ductFaces)[number];

/** Which way the heat goes through the film of still air. */
export type HeatFlow = 'up' | 'across' | 'down';

/** Of cold duct, heat rises into the underside and sinks into the top; of warm duct it is the other way round. */
export function heatFlow(face: DuctFace, isCold: boolean): HeatFlow {
  if (face === 'side') return 'across';
  return (face === 'underside') === isCold ? 'up' : 'down';
}

// State energy code WAC 51-11-0526 (dull); handbook of 2021, chapter 26, table 10, quoted (foil).
const films: Readonly<Record<Surface, Readonly<Record<HeatFlow, number>>>> = {
  dull: { up: 0.61, across: 0.68, down: 0.92 },
  'dulled foil': { up: 1.1, across: 1.35, down: 2.7 },
  'bright foil': { up: 1.32, across: 1.7, down: 4.55 },
};

/** R of the film of still air on the outer face, h·ft²·°F/Btu. */
export function filmOf(surface: Surface, flow: HeatFlow): ThermalResistance {
  return thermalResistance(films[surface][flow]);
}
