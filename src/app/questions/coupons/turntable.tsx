import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Mesh } from '../../../solids/mesh.ts';
import styles from './coupons.module.css';
import { lightMap, NOTHING } from './light-map.ts';
import { picture, type View } from './projection.ts';

const DEGREE = Math.PI / 180;
const FIRST: View = { turn: -28 * DEGREE, tilt: 38 * DEGREE };
const KEY_STEP = 10 * DEGREE;
/** How far a drag of one pixel turns. */
const PER_PIXEL = 0.6 * DEGREE;
/** Dots along a side of the picture: two for each of the 420 px that it is shown at. */
const DOTS = 840;

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
  const light = useMemo(() => lightMap(picture(mesh, view), DOTS), [mesh, view]);
  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (!element || !context) return undefined;
    const draw = () => paint(element, context, light);
    draw();
    // The paper may change from light to dark, by choice or by the system.
    const watcher = new MutationObserver(draw);
    watcher.observe(document.documentElement, { attributes: true });
    const system = typeof matchMedia === 'undefined' ? undefined : matchMedia('(prefers-color-scheme: dark)');
    system?.addEventListener('change', draw);
    return () => {
      watcher.disconnect();
      system?.removeEventListener('change', draw);
    };
  }, [light]);
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
      <canvas ref={canvas} width={DOTS} height={DOTS} />
    </div>
  );
}

/** A colour of the page as its three shares, 0 to 255. */
function sharesOf(colour: string): readonly [number, number, number] {
  const dot = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  if (dot === null) return [0, 0, 0];
  dot.fillStyle = colour;
  dot.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = dot.getImageData(0, 0, 1, 1).data;
  return [red, green, blue];
}

/** Ink of a face in full light, and of one turned away from it, as a share. */
const LEAST_INK = 0.1;
const MOST_INK = 0.62;

const brightness = (shares: readonly number[]): number => shares.reduce((sum, share) => sum + share, 0);

/**
 * Shades from the page's own paper to its ink: dark ink where a face is turned from the light, light ink where it is
 * turned to it.
 */
function paint(canvas: HTMLCanvasElement, context: CanvasRenderingContext2D, light: Float32Array): void {
  const style = getComputedStyle(canvas);
  const paper = sharesOf(style.getPropertyValue('--paper').trim() || '#fff');
  const ink = sharesOf(style.color);
  const isLightInk = brightness(ink) > brightness(paper);
  const dots = context.createImageData(canvas.width, canvas.height);
  for (const [at, bright] of light.entries()) {
    if (bright === NOTHING) continue;
    const share = LEAST_INK + (MOST_INK - LEAST_INK) * (isLightInk ? bright : 1 - bright);
    for (const channel of [0, 1, 2] as const) {
      dots.data[4 * at + channel] = paper[channel] + share * (ink[channel] - paper[channel]);
    }
    dots.data[4 * at + 3] = 255;
  }
  context.putImageData(dots, 0, 0);
}
