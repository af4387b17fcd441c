import type { ChanceModel } from './chance-model.ts';
import { BLOCK_SIZE, type Column, isConstant, type JointBlock } from './joint-block.ts';
import { quickExponential } from './quick-exponential.ts';
import type { SampledMode } from './sampled-modes.ts';
import { BETWEEN, type ScatterKind, WITHIN } from './scatter.ts';

/** Writes slope times number over a column, or adds it. */
function write(into: Column, slope: number, numbers: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) into[place] = slope * (numbers[place] ?? 0);
}
function add(into: Column, slope: number, numbers: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    into[place] = (into[place] ?? 0) + slope * (numbers[place] ?? 0);
  }
}
function multiply(into: Column, factors: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    into[place] = (into[place] ?? 0) * (factors[place] ?? 0);
  }
}

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

/** Writes the scatter of a set-up; that between set-ups and that within where the mode has numbers of its own. */
function writeSetup(
  into: Column,
  deviation: number,
  own: Column,
  { numbers, widths }: ReturnType<typeof sharedBy>,
): void {
  if (own.length === 0) {
    for (let place = 0; place < BLOCK_SIZE; place += 1)
      into[place] = deviation * (numbers[place] ?? 0) * (widths[place] ?? 0);
    return;
  }
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    const number = BETWEEN * (numbers[place] ?? 0) + WITHIN * (own[place] ?? 0);
    into[place] = deviation * number * (widths[place] ?? 0);
  }
}

/** Logarithm of a mode's capacity over its median, by whose scatter it follows. */
function drawScatter(mode: SampledMode, own: Column, block: JointBlock, into: Column): void {
  const { scatter, deviation, perKnurlDiameter, perWall } = mode;
  if (scatter === 'metal') write(into, deviation, own);
  else writeSetup(into, deviation, own, sharedBy(scatter, block));
  if (perKnurlDiameter !== 0) add(into, perKnurlDiameter, block.normals.knurlDiameter);
  if (perWall !== 0) add(into, perWall, block.normals.wall);
}

/** From the logarithm over the median to the capacity. */
function raise(median: number, into: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1)
    into[place] = median * quickExponential(into[place] ?? 0);
}

function divide(into: Column, by: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) into[place] = (into[place] ?? 0) / (by[place] ?? 1);
}

/** From the capacity to the clamp force that leaves room for the pull. */
function subtract(into: Column, pull: number): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) into[place] = (into[place] ?? 0) - pull;
}

/** The same for plastic that the time under load wears down, while the clamp force on it falls. */
function wearDown(into: Column, pull: number, { crept, unloaded }: JointBlock): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    into[place] = ((into[place] ?? 0) / (crept[place] ?? 1) - pull) * (unloaded[place] ?? 1);
  }
}

/** Lowers a column to another one wherever that is less. */
function lower(into: Column, to: Column): void {
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    into[place] = Math.min(into[place] ?? 0, to[place] ?? 0);
  }
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
  weakest.fill(block.weakestFixed);
  weakestPlastic.fill(Number.POSITIVE_INFINITY);
  for (const [index, mode] of modes.entries()) {
    const allowed = block.allowed[index];
    const own = block.normals.own[index];
    if (isFixed[index] || allowed === undefined || own === undefined) continue;
    drawCapacity(mode, own, block, allowed);
    if (mode.path === 'torque') divide(allowed, block.inThread);
    else if (mode.isWorn) wearDown(allowed, pull, block);
    else subtract(allowed, pull);
    lower(mode.scatter === 'metal' ? weakest : weakestPlastic, allowed);
  }
  lower(weakest, weakestPlastic);
}

/** What a mode bears, N or N·mm. */
function drawCapacity(mode: SampledMode, own: Column, block: JointBlock, into: Column): void {
  if (isConstant(mode)) into.fill(mode.median);
  else {
    drawScatter(mode, own, block, into);
    raise(mode.median, into);
  }
  if (mode.scatter === 'knurl') multiply(into, block.bite);
  if (mode.mode === 'screw-yield') divide(into, block.torsion);
}
