import type { ChanceAtTorque } from '../../../core/chance/chance-over-torque.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { type Name, nameOver, type Scale, scaleTo } from './plot.ts';

/** Settings that the curve is worked out at. */
const SETTINGS = 60;
/** How far beyond the window it runs. */
const BEYOND = 1.5;
const PLOT_HEIGHT = 190;
/** Row of the dial, row of the names. */
const TOP = 54;
/** Decades of the upright scale, from 1 in 1 down. */
const DECADES = 4;
const LEFT = 46;

type Window = JointAssessment['torque'];

/** The setting that the page answers for: the dial, or the most where there is none, N·mm. */
export const settingOf = (torque: Window): number => derivedSettingOf(torque).value;

export const derivedSettingOf = (torque: Window): Derived =>
  torque.kind === 'window' ? torque.dial : torque.most;

/** Settings over which the curve runs, N·mm, ascending, all above 0. */
export function curveTorques(torque: Window): readonly number[] {
  const greatest = BEYOND * Math.max(torque.least.value, torque.most.value);
  return Array.from({ length: SETTINGS }, (_, index) => (greatest * (index + 1)) / SETTINGS);
}

export interface CurveShapes {
  readonly height: number;
  readonly base: number;
  readonly top: number;
  readonly left: number;
  readonly right: number;
  readonly scale: Scale;
  /** Chances of the upright scale, with their levels. */
  readonly levels: readonly { readonly y: number; readonly probability: number }[];
  readonly harm: string;
  readonly loose: string;
  /** Left and right end of the window; absent where there is none. */
  readonly window?: { readonly x: number; readonly width: number };
  readonly setting: Name;
}

/** Places of both curves, upright in powers of ten: what is rare is what counts. */
export function curveShapes(
  curve: readonly ChanceAtTorque[],
  torque: Window,
  { width, setting }: { readonly width: number; readonly setting: string },
): CurveShapes {
  const greatest = curve.at(-1)?.torque ?? 1;
  const inner = scaleTo(greatest, { width: width - LEFT, unit: 'N·m' });
  const xOf = (value: number) => LEFT + inner.xOf(value);
  const ticks = inner.ticks.map(({ x, text }) => ({ x: x + LEFT, text }));
  const base = TOP + PLOT_HEIGHT;
  const yOf = (probability: number) => TOP - (Math.log10(probability) / DECADES) * PLOT_HEIGHT;
  const line = (read: (at: ChanceAtTorque) => number) => {
    const shown = curve.filter((at) => read(at) >= 10 ** -DECADES);
    const points = shown.map((at) => `${xOf(at.torque).toFixed(1)} ${yOf(read(at)).toFixed(1)}`);
    return points.length === 0 ? '' : `M${points.join('L')}`;
  };
  const [least, most] = [xOf(torque.least.value), xOf(torque.most.value)];
  return {
    height: base + 26,
    base,
    top: TOP,
    left: xOf(0),
    right: xOf(greatest),
    scale: { ...inner, width, xOf, ticks },
    levels: Array.from({ length: DECADES + 1 }, (_, decade) => ({
      y: yOf(10 ** -decade),
      probability: 10 ** -decade,
    })),
    harm: line(({ harm }) => harm.probability),
    loose: line(({ loose }) => loose.probability),
    ...(torque.kind === 'window' ? { window: { x: least, width: Math.max(1, most - least) } } : {}),
    setting: nameOver(setting, xOf(settingOf(torque)), width),
  };
}

/** Every fourth setting for the table. */
export const curveLines = (curve: readonly ChanceAtTorque[]): readonly ChanceAtTorque[] =>
  curve.filter((_, index) => index % 4 === 3);
