import type { ChanceModel } from './chance-model.ts';
import type { SampledMode } from './sampled-modes.ts';

/** Joints drawn at a time: few enough that all their columns stay in the nearest memory. */
export const BLOCK_SIZE = 512;

/** A number of each joint of a block. */
export type Column = Float64Array;

/** Joints drawn together, a column a quantity; written over with each draw. Forces in N. */
export interface JointBlock {
  /** How many of the joints have been looked at; all of them before the first draw. */
  used: number;
  /** Clamp force per torque that is dialled, 1/mm. */
  readonly forcePerTorque: Column;
  /** Clamp force per torque in the thread, 1/mm. */
  readonly perThreadTorque: Column;
  /** Clamp force that must stand right after tightening so that enough is left. */
  readonly forceNeeded: Column;
  /** Clamp force above which each mode fails, in the order of the model. */
  readonly allowed: readonly Column[];
  /** Whether the mode's column is the same for every joint: written once. */
  readonly isFixed: readonly boolean[];
  /** The least of these among the modes that are fixed, which are of metal; absent where none is. */
  readonly weakestFixed?: Column;
  /** The least of these among the modes of plastic, the insert's turning included, and among all. */
  readonly weakestPlastic: Column;
  readonly weakest: Column;
  /** Share of the intended bite. */
  readonly bite: Column;
  /** What the time under load does to plastic: the share it keeps 1/c, and the first clamp force over the one at the end. */
  readonly kept: Column;
  readonly unloaded: Column;
  /** Equivalent stress of the screw that its capacity was found with over the one that it has. */
  readonly untwisted: Column;
  readonly normals: Normals;
  readonly widths: Widths;
}

/** Standard normal numbers; those of printed parts are absent where the joint has no mode that asks for them. */
export interface Normals {
  readonly tool: Column;
  readonly threadFriction: Column;
  readonly headFriction: Column;
  readonly slipFriction: Column;
  readonly knurlDiameter: Column;
  readonly bore: Column;
  readonly wall: Column;
  readonly knurl: Column;
  readonly host: Column;
  readonly clampedPart: Column;
  /** How much more than the median the plastics creep: one number for all of a joint. */
  readonly creep: Column;
  /** Each mode's own, in the order of the model; none where it follows the scatter of its kind alone. */
  readonly own: readonly Column[];
}

/** How much wider than normal each set-up scatters. */
export interface Widths {
  readonly knurl: Column;
  readonly host: Column;
  readonly clampedPart: Column;
}

const column = (): Column => new Float64Array(BLOCK_SIZE);

/** Stands for a quantity that a joint does not ask for: nothing is drawn into it. */
const NOTHING: Column = new Float64Array(0);

/** Whether nothing of a mode's capacity scatters. */
export const isConstant = ({ scatter, deviation, perKnurlDiameter, perWall }: SampledMode): boolean =>
  scatter === 'metal' && deviation === 0 && perKnurlDiameter === 0 && perWall === 0;

/**
 * Whether a mode follows the scatter of its kind alone: the knurl's modes do, and a mode of plastic that no other one
 * shares its kind with, whose scatters between set-ups and within add up to a single one.
 */
const isScatteredAsOne = ({ scatter }: SampledMode, modes: readonly SampledMode[]): boolean =>
  scatter === 'knurl' || (scatter !== 'metal' && modes.filter((one) => one.scatter === scatter).length === 1);

/** Clamp force that a mode allows in every joint alike; undefined where it scatters, or follows a friction. */
function fixedForce(mode: SampledMode, pull: number): number | undefined {
  const follows = mode.path === 'torque' || mode.mode === 'screw-yield';
  return isConstant(mode) && !follows ? mode.median - pull : undefined;
}

/** Room for a block of joints of a model. Only what the model asks for is drawn: it takes most of the time. */
export function roomForBlock(model: ChanceModel): JointBlock {
  const { modes, shear, pull, lost, crept } = model;
  const columnIf = (needed: boolean) => (needed ? column() : NOTHING);
  const follows = (kind: SampledMode['scatter']) => modes.some(({ scatter }) => scatter === kind);
  const [host, clampedPart, knurl] = [follows('host'), follows('clamped-part'), follows('knurl')];
  const wears = modes.some((mode) => mode.isWorn);
  const hasOwn = (mode: SampledMode) => !isConstant(mode) && !isScatteredAsOne(mode, modes);
  const fixed = modes.map((mode) => fixedForce(mode, pull));
  const leastFixed = Math.min(...fixed.map((force) => force ?? Number.POSITIVE_INFINITY));
  return {
    used: BLOCK_SIZE,
    forcePerTorque: column(),
    perThreadTorque: column(),
    forceNeeded: column(),
    allowed: fixed.map((force) => column().fill(force ?? Number.NaN)),
    isFixed: fixed.map((force) => force !== undefined),
    ...(leastFixed === Number.POSITIVE_INFINITY ? {} : { weakestFixed: column().fill(leastFixed) }),
    weakestPlastic: column(),
    weakest: column(),
    bite: columnIf(knurl),
    kept: columnIf(wears),
    unloaded: columnIf(wears),
    untwisted: columnIf(modes.some(({ mode }) => mode === 'screw-yield')),
    normals: {
      tool: column(),
      threadFriction: column(),
      headFriction: column(),
      slipFriction: columnIf(shear > 0),
      knurlDiameter: column(),
      bore: columnIf(knurl),
      wall: columnIf(host),
      knurl: columnIf(knurl),
      host: columnIf(host),
      clampedPart: columnIf(clampedPart),
      creep: columnIf(lost.deviation > 0 || (wears && crept.deviation > 0)),
      own: modes.map((mode) => columnIf(hasOwn(mode))),
    },
    widths: { knurl: columnIf(knurl), host: columnIf(host), clampedPart: columnIf(clampedPart) },
  };
}
