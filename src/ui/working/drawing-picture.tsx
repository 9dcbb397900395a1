import { createElement, type ReactElement } from 'react';
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
  return createElement(
    tag,
    { ...Object.fromEntries(named), ...more },
    // Spread out, so that no child needs a key: a drawing is made anew as a whole.
    ...children.map((child) => (typeof child === 'string' ? child : elementOf(child))),
  );
}

/** React writes `class` and names with hyphens in its own way. */
function reactName(name: string): string {
  return name === 'class'
    ? 'className'
    : name.replace(/-([a-z])/g, (_hyphen, letter: string) => letter.toUpperCase());
}
