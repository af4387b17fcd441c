import type { ChanceModel } from './chance-model.ts';
import { BLOCK_SIZE, type Column, isConstant, type JointBlock } from './joint-block.ts';
import { lesser } from './lesser.ts';
import { quickExponential } from './quick-exponential.ts';
import type { SampledMode } from './sampled-modes.ts';
import { BETWEEN, type ScatterKind, WITHIN } from './scatter.ts';

/** Columns that change nothing, where a mode has nothing to add or to multiply by. */
const ZEROS: Column = new Float64Array(BLOCK_SIZE);
const ONES: Column = new Float64Array(BLOCK_SIZE).fill(1);
/** Stands where no mode of a kind is in the joint. */
const NO_LIMIT: Column = new Float64Array(BLOCK_SIZE).fill(Number.POSITIVE_INFINITY);

/** Numbers that the modes of one kind share, and how much wider than normal they scatter. */
function sharedBy(kind: Exclude<ScatterKind, 'metal'>, { normals, widths }: JointBlock) {
  switch (kind) {
    case 'knurl':
      return { numbers: normals.knurl, widths: widths.knurl };
    case 'host':
      return { numbers: normals.host, widths: widths.host };
    case 'clamped-part':
      return { numbers: normals.clampedPart, widths: widths.clampedPart };
  }
}

/** Logarithm of a mode's capacity over its median, by whose scatter it follows. */
function drawScatter(mode: SampledMode, own: Column, block: JointBlock, into: Column): void {
  const { scatter, deviation, perKnurlDiameter, perWall } = mode;
  const knurlDiameter = perKnurlDiameter === 0 ? ZEROS : block.normals.knurlDiameter;
  const wall = perWall === 0 ? ZEROS : block.normals.wall;
  if (scatter === 'metal') {
    for (let place = 0; place < BLOCK_SIZE; place += 1) {
      const onDiameter = perKnurlDiameter * (knurlDiameter[place] ?? 0);
      into[place] = deviation * (own[place] ?? 0) + onDiameter + perWall * (wall[place] ?? 0);
    }
    return;
  }
  const { numbers, widths } = sharedBy(scatter, block);
  // That between set-ups and that within where the mode has numbers of its own.
  const hasOwn = own.length > 0;
  const [between, within, others] = hasOwn ? [BETWEEN, WITHIN, own] : [1, 0, ZEROS];
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    const number = between * (numbers[place] ?? 0) + within * (others[place] ?? 0);
    const onDiameter = perKnurlDiameter * (knurlDiameter[place] ?? 0);
    into[place] = deviation * number * (widths[place] ?? 0) + onDiameter + perWall * (wall[place] ?? 0);
  }
}

/** What turns a mode's capacity into the clamp force that it allows. */
interface Allowance {
  readonly median: number;
  /** Of the knurl: its share of the intended bite. */
  readonly bite: Column;
  /** What is left of worn plastic; force per torque in the thread; of the screw, what twisting leaves. */
  readonly times: Column;
  readonly pull: number;
  /** By how much the clamp force has fallen when worn plastic bears it. */
  readonly unloaded: Column;
}

function allowanceOf(mode: SampledMode, pull: number, block: JointBlock): Allowance {
  const { median, scatter, path, isWorn } = mode;
  if (mode.mode === 'screw-yield')
    return { median, bite: ONES, times: block.untwisted, pull, unloaded: ONES };
  const bite = scatter === 'knurl' ? block.bite : ONES;
  if (path === 'torque') return { median, bite, times: block.perThreadTorque, pull: 0, unloaded: ONES };
  if (isWorn) return { median, bite, times: block.kept, pull, unloaded: block.unloaded };
  return { median, bite, times: ONES, pull, unloaded: ONES };
}

/** From the logarithm over the median to the clamp force that is allowed; the least of it and of others besides. */
function allow(
  { median, bite, times, pull, unloaded }: Allowance,
  into: Column,
  { others, least }: { readonly others: Column; readonly least: Column },
): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    const capacity = median * quickExponential(into[place] ?? 0) * (bite[place] ?? 1);
    const force = (capacity * (times[place] ?? 1) - pull) * (unloaded[place] ?? 1);
    into[place] = force;
    least[place] = lesser(force, others[place] ?? 0);
  }
}

/** Writes the least of two columns. */
function writeLesser(one: Column, other: Column, into: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1)
    into[place] = lesser(one[place] ?? 0, other[place] ?? 0);
}

/**
 * Clamp force above which each mode of each joint fails; the whole pull comes on top of it, as in the torque window.
 *
 *     F > R − P            force modes
 *     F > (R/c − P)/R_F    plastic that the time under load wears down
 *     F > R/m              insert turns, m = torque in the thread per force
 *     ln R = ln median + slopes · z + s · t + ln bite        bite for the knurl's modes only
 *
 * @param model - medians R, pull P [N], what scatters
 * @param block - with its numbers, tightening and bite drawn; the allowed forces and the least of them are written
 * @source own-model load factor 1
 */
export function drawAllowed({ modes, pull }: ChanceModel, block: JointBlock): void {
  const { weakest, weakestPlastic, isFixed } = block;
  // The least so far, of metal and of plastic; undefined before the first.
  let ofMetal = block.weakestFixed;
  let ofPlastic: Column | undefined;
  for (const [index, mode] of modes.entries()) {
    const allowed = block.allowed[index];
    const own = block.normals.own[index];
    if (isFixed[index] || allowed === undefined || own === undefined) continue;
    if (isConstant(mode)) allowed.fill(0);
    else drawScatter(mode, own, block, allowed);
    const isMetal = mode.scatter === 'metal';
    const least = isMetal ? weakest : weakestPlastic;
    const others = (isMetal ? ofMetal : ofPlastic) ?? allowed;
    allow(allowanceOf(mode, pull, block), allowed, { others, least });
    if (isMetal) ofMetal = weakest;
    else ofPlastic = weakestPlastic;
  }
  const [one = NO_LIMIT, other = one] = [ofMetal ?? ofPlastic, ofPlastic];
  if (one === NO_LIMIT) weakest.set(one);
  else writeLesser(one, other, weakest);
  if (ofPlastic === undefined) weakestPlastic.set(NO_LIMIT);
}
