import { useId } from 'react';
import { type Drawing, drawingWidth, type Mark, type Point } from '../../catalogue/drawing.ts';

const tick = 5;
/** About the width of one letter, to see whether a text fits along its measure. */
const letter = 7;

/** A drawing on the page: shapes by role, measures with slanted ticks, and its words for whoever cannot see it. */
export function DrawingPicture({ drawing }: { readonly drawing: Drawing }) {
  const id = useId();
  return (
    <figure className="drawing-frame">
      <svg
        className="drawing"
        viewBox={`0 0 ${drawingWidth} ${drawing.height}`}
        role="img"
        aria-labelledby={`${id}-title ${id}-describes`}
      >
        <title id={`${id}-title`}>{drawing.title}</title>
        <desc id={`${id}-describes`}>{drawing.describes}</desc>
        {drawing.marks.map((mark, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: marks have no name but their place
          <MarkShape mark={mark} key={index} />
        ))}
      </svg>
    </figure>
  );
}

function MarkShape({ mark }: { readonly mark: Mark }) {
  switch (mark.type) {
    case 'outline': {
      const points = mark.points.map(({ x, y }) => `${x},${y}`).join(' ');
      const className = `drawing-${mark.role}`;
      return mark.closed ? (
        <polygon className={className} points={points} />
      ) : (
        <polyline className={`${className} drawing-open`} points={points} />
      );
    }
    case 'circle':
      return (
        <circle className={`drawing-${mark.role}`} cx={mark.centre.x} cy={mark.centre.y} r={mark.radius} />
      );
    case 'ring':
      return <path className={`drawing-${mark.role}`} fillRule="evenodd" d={ringPath(mark)} />;
    case 'label':
      return (
        <text className="drawing-label" x={mark.at.x} y={mark.at.y} textAnchor={mark.anchor}>
          {mark.text}
        </text>
      );
    case 'measure':
      return <Measure {...mark} />;
  }
}

function ringPath({ centre, inner, outer }: Extract<Mark, { type: 'ring' }>): string {
  const around = (radius: number) =>
    `M${centre.x - radius},${centre.y}a${radius},${radius} 0 1 0 ${2 * radius},0a${radius},${radius} 0 1 0 ${-2 * radius},0z`;
  return around(outer) + around(inner);
}

function Measure({ from, to, text }: Extract<Mark, { type: 'measure' }>) {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const isUpright = Math.abs(along.y) > Math.abs(along.x);
  const runsAlong = isUpright && length > text.length * letter;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return (
    <g className="drawing-measure">
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      <Tick at={from} along={along} />
      <Tick at={to} along={along} />
      {isUpright && !runsAlong ? (
        <text x={middle.x + 7} y={middle.y + 4} textAnchor="start">
          {text}
        </text>
      ) : (
        <text
          x={middle.x}
          y={middle.y - 6}
          textAnchor="middle"
          {...(runsAlong ? { transform: `rotate(-90 ${middle.x} ${middle.y})` } : {})}
        >
          {text}
        </text>
      )}
    </g>
  );
}

/** A short stroke across the end of a measure, as on a shop drawing. */
function Tick({ at, along }: { readonly at: Point; readonly along: Point }) {
  const across = { x: along.x + along.y, y: along.y - along.x };
  const half = tick / Math.SQRT2;
  return (
    <line
      className="drawing-tick"
      x1={at.x - across.x * half}
      y1={at.y - across.y * half}
      x2={at.x + across.x * half}
      y2={at.y + across.y * half}
    />
  );
}
