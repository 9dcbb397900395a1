/** How many marks of the tape a length is brought to. */
export const marksFormulas = [
  String.raw`n = \mathrm{length} \times \mathrm{denominator}`,
  String.raw`\text{marks} = \lceil n \rceil \text{ (up)}, \quad \lfloor n \rfloor \text{ (down)}, \quad \pm \left\lfloor |n| + \tfrac{1}{2} \right\rfloor \text{ with the sign of } n \text{ (nearest)}`,
] as const;
