import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Mesh } from '../../../solids/mesh.ts';
import styles from './coupons.module.css';
import { picture, type View } from './projection.ts';

const DEGREE = Math.PI / 180;
const FIRST: View = { turn: -28 * DEGREE, tilt: 38 * DEGREE };
const KEY_STEP = 10 * DEGREE;
/** How far a drag of one pixel turns. */
const PER_PIXEL = 0.6 * DEGREE;
/** Side of the picture, px; fewer on a narrow page. */
const SIDE = 420;
const MARGIN = 0.94;

const KEYS: Readonly<Record<string, View>> = {
  ArrowLeft: { turn: -KEY_STEP, tilt: 0 },
  ArrowRight: { turn: KEY_STEP, tilt: 0 },
  ArrowUp: { turn: 0, tilt: KEY_STEP },
  ArrowDown: { turn: 0, tilt: -KEY_STEP },
};

const turned = (view: View, by: View): View => ({
  turn: view.turn + by.turn,
  tilt: Math.max(-90 * DEGREE, Math.min(90 * DEGREE, view.tilt + by.tilt)),
});

/** Degrees of the turn, 0 to below 360. */
const degreesOf = ({ turn }: View): number => Math.round((((turn / DEGREE) % 360) + 360) % 360) % 360;

/** A solid on a turntable: dragged, or turned and tilted by the arrow keys. */
export function Turntable({ mesh, name }: { readonly mesh: Mesh; readonly name: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const grip = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const [view, setView] = useState(FIRST);
  const seen = useMemo(() => picture(mesh, view), [mesh, view]);
  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (!element || !context) return undefined;
    const draw = () => paint(element, context, seen);
    draw();
    // The paper may change from light to dark.
    const watcher = new MutationObserver(draw);
    watcher.observe(document.documentElement, { attributes: true });
    return () => watcher.disconnect();
  }, [seen]);
  const press = (event: KeyboardEvent) => {
    const by = KEYS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    setView(turned(view, by));
  };
  const drag = (event: PointerEvent) => {
    const from = grip.current;
    if (from === null) return;
    grip.current = { x: event.clientX, y: event.clientY };
    setView((before) =>
      turned(before, {
        turn: (event.clientX - from.x) * PER_PIXEL,
        tilt: (event.clientY - from.y) * PER_PIXEL,
      }),
    );
  };
  const degrees = degreesOf(view);
  return (
    <div
      className={styles.turntable}
      role="slider"
      tabIndex={0}
      aria-label={`${name} on a turntable; arrow keys turn and tilt it`}
      aria-valuemin={0}
      aria-valuemax={359}
      aria-valuenow={degrees}
      aria-valuetext={`turned ${degrees}°, tilted ${Math.round(view.tilt / DEGREE)}°`}
      onKeyDown={press}
      onPointerDown={(event) => {
        grip.current = { x: event.clientX, y: event.clientY };
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={drag}
      onPointerUp={() => {
        grip.current = null;
      }}
      onPointerCancel={() => {
        grip.current = null;
      }}
    >
      <canvas ref={canvas} width={2 * SIDE} height={2 * SIDE} />
    </div>
  );
}

/** Shades from the page's own paper and ink: the more a face is turned from the light, the more ink. */
function paint(
  canvas: HTMLCanvasElement,
  context: CanvasRenderingContext2D,
  { facets, reach }: ReturnType<typeof picture>,
): void {
  const style = getComputedStyle(canvas);
  const paper = style.getPropertyValue('--paper').trim() || '#fff';
  const ink = style.color;
  const scale = (MARGIN * canvas.width) / 2 / reach;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, canvas.width, canvas.height);
  context.setTransform(scale, 0, 0, scale, canvas.width / 2, canvas.height / 2);
  context.lineWidth = 1.2 / scale;
  context.lineJoin = 'round';
  for (const { corners, light } of facets) {
    context.beginPath();
    for (const [x, y] of corners) context.lineTo(x, y);
    context.closePath();
    for (const [colour, share] of [
      [paper, 1],
      [ink, 0.08 + 0.5 * (1 - light)],
    ] as const) {
      context.globalAlpha = share;
      context.fillStyle = colour;
      context.fill();
      if (share === 1) {
        // Closes the hairlines between neighbouring faces.
        context.strokeStyle = colour;
        context.stroke();
      }
    }
  }
  context.globalAlpha = 1;
}
