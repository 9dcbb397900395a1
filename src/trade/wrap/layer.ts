import {
  type Conductivity,
  type Inches,
  inches,
  type ThermalResistance,
  thermalResistance,
} from '../../base/quantity.ts';
import { closeIn } from '../air/close-in.ts';

/** R of a flat layer: thickness over conductivity. Inches and Btu·in/(h·ft²·°F) in, h·ft²·°F/Btu out. */
export function flatR(thickness: Inches, k: Conductivity): ThermalResistance {
  return thermalResistance(thickness / k);
}

export interface RoundLayer {
  readonly inner: Inches;
  readonly outer: Inches;
  /** What the same layer would be flat: the figure that labels and codes mean. */
  readonly flat: ThermalResistance;
  /** For each square foot of bare duct: for the heat that a run gains. Always less than flat. */
  readonly onBare: ThermalResistance;
  /** For each square foot of the outer face: for its temperature. Always more than flat. */
  readonly onFace: ThermalResistance;
}

/** R of a layer round a pipe, by radial conduction. Source: textbook; held beside a paper on round residential duct. */
export function roundLayer(diameter: Inches, thickness: Inches, k: Conductivity): RoundLayer {
  const inner = inches(diameter / 2);
  const outer = inches(inner + thickness);
  const spread = Math.log1p(thickness / inner) / k;
  return {
    inner,
    outer,
    flat: flatR(thickness, k),
    onBare: thermalResistance(inner * spread),
    onFace: thermalResistance(outer * spread),
  };
}

/** The thickness that gives a layer round a pipe so much R on its outer face. Never more than the flat layer needs. */
export function thicknessForFace(diameter: Inches, k: Conductivity, r: ThermalResistance): Inches {
  const flat = k * r;
  if (flat === 0) return inches(0);
  return inches(
    closeIn(0, flat, (thickness) => roundLayer(diameter, inches(thickness), k).onFace >= r).above,
  );
}
