import { type Inches, inches } from '../../base/quantity.ts';
import { type DuctSection, perimeter } from '../section.ts';

export interface JointSeal {
  readonly around: Inches;
  readonly joints: number;
  readonly length: Inches;
}

/** Sealing length of so many joints between lengths of one duct, once round the bare metal each. In inches. */
export function jointSeal(section: DuctSection, joints: number): JointSeal {
  const around = perimeter(section);
  return { around, joints, length: inches(around * joints) };
}
