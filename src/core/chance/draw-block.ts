import type { ChanceModel } from './chance-model.ts';
import { drawAllowed } from './draw-allowed.ts';
import type { Generator } from './generator.ts';
import { BLOCK_SIZE, type Column, type JointBlock } from './joint-block.ts';
import { heldShare } from './lesser.ts';
import { fillNormal, normalVariate } from './normal-variate.ts';
import { quickExponential } from './quick-exponential.ts';
import { type Growth, SETUP_FREEDOM } from './scatter.ts';
import { fillStudentScale } from './student-scale.ts';

/** Draws every random number of a block, always in the same order. */
function drawNumbers(generator: Generator, knurlFreedom: number, { normals, widths }: JointBlock): void {
  const { own, ...shared } = normals;
  for (const column of [...Object.values<Column>(shared), ...own]) fillNormal(generator, column);
  fillStudentScale(generator, knurlFreedom, widths.knurl);
  fillStudentScale(generator, SETUP_FREEDOM, widths.host);
  fillStudentScale(generator, SETUP_FREEDOM, widths.clampedPart);
}

/** What the tool gives over what is dialled, [-], above 0: a setting cannot turn backwards. */
function toolRatio(deviation: number, first: number, generator: Generator): number {
  let ratio = 1 + deviation * first;
  while (ratio <= 0) ratio = 1 + deviation * normalVariate(generator);
  return ratio;
}

/** Clamp force per torque, and equivalent over tensile stress of the screw, which both follow the friction. */
function drawTightening(model: ChanceModel, generator: Generator, into: JointBlock): void {
  const { pitchTorque, threadTorque, headTorque, toolDeviation, torsionTaken } = model;
  const { threadFriction: inThreads, headFriction: underHeads, torsionAtNone, torsionPerFriction } = model;
  const { normals, perThreadTorque, forcePerTorque, untwisted } = into;
  const twists = untwisted.length > 0;
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    const friction = quickExponential(
      inThreads.centre + inThreads.deviation * (normals.threadFriction[place] ?? 0),
    );
    const headFriction = quickExponential(
      underHeads.centre + underHeads.deviation * (normals.headFriction[place] ?? 0),
    );
    const threadPart = pitchTorque + threadTorque * friction;
    perThreadTorque[place] = 1 / threadPart;
    forcePerTorque[place] =
      toolRatio(toolDeviation, normals.tool[place] ?? 0, generator) /
      (threadPart + headTorque * headFriction);
    // See torque/yield-preload.
    if (twists)
      untwisted[place] = torsionTaken / Math.sqrt(1 + (torsionAtNone + torsionPerFriction * friction) ** 2);
  }
}

/** 1 + g for each joint: how many times its first value something has. */
function drawGrowth({ median, deviation }: Growth, numbers: Column, into: Column): void {
  if (deviation === 0) {
    into.fill(1 + median);
    return;
  }
  for (let place = 0; place < into.length; place += 1) {
    into[place] = 1 + median * quickExponential(deviation * (numbers[place] ?? 0));
  }
}

/** 1/(1 + g) for each joint: the share of its first value that something keeps. */
function drawKept(growth: Growth, numbers: Column, into: Column): void {
  drawGrowth(growth, numbers, into);
  for (let place = 0; place < into.length; place += 1) into[place] = 1 / (into[place] ?? 1);
}

/** Clamp force that must stand right after tightening. */
function drawForceNeeded(
  { pull, shear, slipFriction, lost, lostAtEnd }: ChanceModel,
  into: JointBlock,
): void {
  const { forceNeeded, normals, unloaded } = into;
  // Without a re-tightening the least is left at the end, which is drawn already.
  const isLeastAtEnd = lost.median === lostAtEnd.median && lost.deviation === lostAtEnd.deviation;
  if (isLeastAtEnd && unloaded.length > 0) forceNeeded.set(unloaded);
  else drawGrowth(lost, normals.creep, forceNeeded);
  if (shear === 0) {
    for (let place = 0; place < BLOCK_SIZE; place += 1) forceNeeded[place] = pull * (forceNeeded[place] ?? 0);
    return;
  }
  const { centre, deviation } = slipFriction;
  for (let place = 0; place < BLOCK_SIZE; place += 1) {
    const oneOverFriction = quickExponential(-centre - deviation * (normals.slipFriction[place] ?? 0));
    forceNeeded[place] = (pull + shear * oneOverFriction) * (forceNeeded[place] ?? 0);
  }
}

/** Share of the intended bite, as biteFactorOf has it: a knurl thinner than designed bites as little as a wider bore. */
function drawBite(model: ChanceModel, { bite, normals }: JointBlock): void {
  const { knurlDiameter: knurl, intendedBore: intended, expectedBore, boreDeviation, knurlDeviation } = model;
  const perBite = 1 / (knurl - intended);
  for (let place = 0; place < bite.length; place += 1) {
    const expected =
      expectedBore +
      boreDeviation * (normals.bore[place] ?? 0) -
      knurlDeviation * (normals.knurlDiameter[place] ?? 0);
    bite[place] = heldShare((knurl - expected) * perBite);
  }
}

/**
 * A block of joints drawn out of all that the model admits.
 *
 *     F/T    = d/(P/(2π) + μG · … + μK · …)                  d = 1 + s · z of the tool
 *     needed = (P + Q/μs) · (1 + g)        g = (1 − R)/R of the share R that is left
 *
 * See drawAllowed for what each joint bears, and chanceModel for what scatters how. Drawn column by column: short
 * loops over numbers side by side take about half as long as one joint after the other.
 *
 * @param model - what scatters
 * @param generator - moves on by the draws of a whole block
 * @param into - the block, written over; made for this model
 * @source own-model what scatters and how
 */
export function drawBlock(model: ChanceModel, generator: Generator, into: JointBlock): void {
  drawNumbers(generator, model.knurlFreedom, into);
  drawTightening(model, generator, into);
  drawBite(model, into);
  drawKept(model.crept, into.normals.creep, into.kept);
  drawGrowth(model.lostAtEnd, into.normals.creep, into.unloaded);
  drawForceNeeded(model, into);
  drawAllowed(model, into);
  into.used = 0;
}

/**
 * Goes through a number of joints, block by block. What a block has left serves the next call: the same joints come
 * out however they are asked for.
 *
 * @param model - what scatters
 * @param from - generator, and the block made for this model
 * @param count - joints to look at [-], ≥ 0
 * @param look - is given the places from … below to of the block
 */
export function forEachJoint(
  model: ChanceModel,
  from: { readonly generator: Generator; readonly block: JointBlock },
  count: number,
  look: (from: number, to: number) => void,
): void {
  const { generator, block } = from;
  for (let left = count; left > 0; ) {
    if (block.used === BLOCK_SIZE) drawBlock(model, generator, block);
    const to = Math.min(BLOCK_SIZE, block.used + left);
    look(block.used, to);
    left -= to - block.used;
    block.used = to;
  }
}
