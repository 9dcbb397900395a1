import { createElement, type ReactElement, type ReactNode } from 'react';
import type { Drawing } from '../../catalogue/drawing.ts';
import { drawSvg, type SvgNode } from '../../catalogue/svg.ts';
import './drawing.css';

/** A drawing on the page, and its words for whoever cannot see it. */
export function DrawingPicture({ drawing }: { readonly drawing: Drawing }) {
  return (
    <figure className="drawing-frame">
      {elementOf(drawSvg(drawing), { 'aria-label': `${drawing.title}. ${drawing.describes}` })}
    </figure>
  );
}

function elementOf(
  { tag, attributes, children }: SvgNode,
  more: { readonly [name: string]: string } = {},
): ReactElement {
  const named = Object.entries(attributes).map(([name, value]) => [reactName(name), value]);
  const inside = children.flatMap((child): readonly ReactNode[] => {
    if (typeof child !== 'string') return [elementOf(child)];
    return tag === 'text' ? withFractions(child) : [child];
  });
  // Spread out, so that no child needs a key: a drawing is made anew as a whole.
  return createElement(tag, { ...Object.fromEntries(named), ...more }, ...inside);
}

/** `66 7⁄16″` with the numerator raised and both numbers small. */
function withFractions(text: string): readonly ReactNode[] {
  const parts = text.split(/(\d+)⁄(\d+)/);
  return parts.flatMap((part, index): readonly ReactNode[] => {
    if (index % 3 === 0) return [part];
    const isNumerator = index % 3 === 1;
    const number = createElement('tspan', { className: 'drawing-small', dy: isNumerator ? -raise : 0 }, part);
    return isNumerator ? [number, createElement('tspan', { dy: raise }, '⁄')] : [number];
  });
}

/** In the units of the drawing, where text is 12 high. */
const raise = 3.4;

/** React writes `class` and names with hyphens in its own way. */
function reactName(name: string): string {
  return name === 'class'
    ? 'className'
    : name.replace(/-([a-z])/g, (_hyphen, letter: string) => letter.toUpperCase());
}
