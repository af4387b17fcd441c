import type { ChanceModel, SampledMode } from './chance-model.ts';
import type { ScatterKind } from './scatter.ts';

/** Places of the normal numbers of one joint; those that only some joints need follow. */
export const NORMAL = {
  threadFriction: 0,
  headFriction: 1,
  slipFriction: 2,
  tool: 3,
  knurlDiameter: 4,
  bore: 5,
  knurl: 6,
  all: 7,
} as const;

/** Place of the width of the knurl's set-up; those of printed parts follow. */
export const KNURL_WIDTH = 0;

/** Where a joint finds its random numbers. */
interface Places {
  readonly normals: number;
  readonly widths: number;
  readonly wall: number;
  readonly host: number;
  readonly hostWidth: number;
  readonly clampedPart: number;
  readonly clampedPartWidth: number;
  /** Of each mode's own scatter; any place where it has none. */
  readonly own: Uint8Array;
}

/** Only what a joint needs is drawn: a metal part on the insert asks for half of what a boss over a gap does. */
function placesOf(modes: readonly SampledMode[]): Places {
  let normals: number = NORMAL.all;
  let widths = KNURL_WIDTH + 1;
  const scatters = (kind: ScatterKind) => modes.some(({ scatter }) => scatter === kind);
  const [host, clampedPart] = [scatters('host'), scatters('clamped-part')];
  const ifNeeded = (needed: boolean) => (needed ? normals++ : 0);
  const widthIfNeeded = (needed: boolean) => (needed ? widths++ : 0);
  const own = Uint8Array.from(modes, ({ scatter, deviation }) =>
    ifNeeded(scatter !== 'knurl' && (scatter !== 'metal' || deviation > 0)),
  );
  const printed = {
    wall: ifNeeded(host),
    host: ifNeeded(host),
    hostWidth: widthIfNeeded(host),
    clampedPart: ifNeeded(clampedPart),
    clampedPartWidth: widthIfNeeded(clampedPart),
  };
  return { ...printed, own, normals, widths };
}

/** What a mode follows, as a number; the screw's yield also follows the friction of the thread. */
export const FOLLOWS = { metal: 0, torsion: 1, knurl: 2, host: 3, 'clamped-part': 4 } as const;

/** The modes of a model, column by column: much quicker to go through than objects. */
interface ModeColumns {
  /** Logarithm of the median [N or N·mm]; −∞ where nothing is borne. */
  readonly logMedian: Float64Array;
  readonly deviation: Float64Array;
  readonly perKnurlDiameter: Float64Array;
  readonly perWall: Float64Array;
  readonly follows: Uint8Array;
  readonly turns: Uint8Array;
}

function columnsOf(modes: readonly SampledMode[]): ModeColumns {
  const column = (read: (mode: SampledMode) => number) => Float64Array.from(modes, read);
  return {
    logMedian: column(({ median }) => Math.log(median)),
    deviation: column(({ deviation }) => deviation),
    perKnurlDiameter: column(({ perKnurlDiameter }) => perKnurlDiameter),
    perWall: column(({ perWall }) => perWall),
    follows: Uint8Array.from(modes, ({ mode, scatter }) =>
      mode === 'screw-yield' ? FOLLOWS.torsion : FOLLOWS[scatter],
    ),
    turns: Uint8Array.from(modes, ({ path }) => (path === 'torque' ? 1 : 0)),
  };
}

/** One joint out of many; written over with each draw. Forces in N. */
export interface SampledJoint {
  /** Clamp force per torque that is dialled, 1/mm. */
  forcePerTorque: number;
  /** Torque in the thread per clamp force, mm. */
  inThread: number;
  /** Clamp force that must stand right after tightening so that enough is left. */
  forceNeeded: number;
  /** Clamp force that the first plastic mode bears. */
  weakestPlastic: number;
  /** Clamp force that the first mode of all bears. */
  weakest: number;
  /** Logarithm of what each mode bears [N or N·mm], in the order of the model. */
  readonly logBorne: Float64Array;
  readonly normals: Float64Array;
  readonly widths: Float64Array;
  readonly places: Places;
  readonly columns: ModeColumns;
}

/** Room for one joint of a model. */
export function roomForJoint({ modes }: ChanceModel): SampledJoint {
  const places = placesOf(modes);
  return {
    forcePerTorque: Number.NaN,
    inThread: Number.NaN,
    forceNeeded: Number.NaN,
    weakestPlastic: Number.NaN,
    weakest: Number.NaN,
    logBorne: new Float64Array(modes.length),
    normals: new Float64Array(places.normals),
    widths: new Float64Array(places.widths),
    places,
    columns: columnsOf(modes),
  };
}
