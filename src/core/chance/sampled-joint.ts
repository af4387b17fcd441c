import type { ChanceModel } from './chance-model.ts';
import type { Generator } from './generator.ts';
import { fillNormal, normalVariate } from './normal-variate.ts';
import { FOLLOWS, KNURL_WIDTH, NORMAL, type SampledJoint } from './sampling-room.ts';
import { SETUP_FREEDOM, WITHIN_SHARE } from './scatter.ts';
import { fillStudentScale } from './student-scale.ts';

/** Shares of a set-up's deviation between set-ups and within one, [-]; their squares add up to 1. */
const BETWEEN = Math.sqrt(1 - WITHIN_SHARE);
const WITHIN = Math.sqrt(WITHIN_SHARE);

/**
 * Whether a mode is used up at a clamp force; the whole pull comes on top of it, as in the torque window.
 *
 *     F + P > R        force modes
 *     F · m > R        insert turns, m = torque in the thread per force
 *
 * @param model - pull P [N]
 * @param joint - as drawn
 * @param mode - place of the mode in the model
 * @param force - clamp force F [N]
 * @returns true where it fails
 * @source own-model load factor 1
 */
export function fails(model: ChanceModel, joint: SampledJoint, mode: number, force: number): boolean {
  const borne = Math.exp(joint.logBorne[mode] ?? 0);
  return joint.columns.turns[mode] === 1 ? force > borne / joint.inThread : force > borne - model.pull;
}

/** What the tool gives over what is dialled, [-], above 0: a setting cannot turn backwards. */
function toolRatio(deviation: number, first: number, generator: Generator): number {
  let ratio = 1 + deviation * first;
  while (ratio <= 0) ratio = 1 + deviation * normalVariate(generator);
  return ratio;
}

/**
 * One joint drawn out of all that the model admits.
 *
 *     F/T    = d/(P/(2π) + μG · … + μK · …)                  d = 1 + s · z of the tool
 *     needed = (P + Q/μs)/R_F
 *     ln R   = ln median + slopes · z + ln bite + s · t      bite for the knurl's modes only
 *
 * See `fails` for when a mode fails, and chanceModel for what scatters how.
 *
 * @param model - what scatters
 * @param generator - moves on by the draws of one joint
 * @param into - the joint, written over; made for this model
 * @source own-model what scatters and how
 */
export function drawJoint(model: ChanceModel, generator: Generator, into: SampledJoint): void {
  const { threadFriction: threadFrictions, headFriction: headFrictions, slipFriction: slipFrictions } = model;
  const { normals, widths } = into;
  fillNormal(generator, normals);
  fillStudentScale(generator, SETUP_FREEDOM, widths);
  const z = (place: number): number => normals[place] ?? 0;

  const threadFriction = Math.exp(
    threadFrictions.centre + threadFrictions.deviation * z(NORMAL.threadFriction),
  );
  const headFriction = Math.exp(headFrictions.centre + headFrictions.deviation * z(NORMAL.headFriction));
  const inThread = model.pitchTorque + model.threadTorque * threadFriction;
  into.inThread = inThread;
  into.forcePerTorque =
    toolRatio(model.toolDeviation, z(NORMAL.tool), generator) / (inThread + model.headTorque * headFriction);
  const slipForce =
    model.shear === 0
      ? 0
      : model.shear / Math.exp(slipFrictions.centre + slipFrictions.deviation * z(NORMAL.slipFriction));
  into.forceNeeded = (model.pull + slipForce) / model.preloadLeft;
  bearModes(model, into, torsionOf(model, threadFriction) / model.torsionTaken);
}

/** Works out what each mode of a joint bears from its random numbers, and the weakest of them. */
function bearModes(model: ChanceModel, into: SampledJoint, torsion: number): void {
  const { normals, widths, logBorne, places } = into;
  const { own } = places;
  const { logMedian, deviation, perKnurlDiameter, perWall, follows, turns } = into.columns;
  const knurlDiameter = normals[NORMAL.knurlDiameter] ?? 0;
  const wall = normals[places.wall] ?? 0;
  const bite = biteOf(model, knurlDiameter, normals[NORMAL.bore] ?? 0);
  const logBite = bite === 1 ? 0 : Math.log(bite);
  const knurl = (widths[KNURL_WIDTH] ?? 0) * (normals[NORMAL.knurl] ?? 0);
  const host = BETWEEN * (normals[places.host] ?? 0);
  const hostWidth = widths[places.hostWidth] ?? 0;
  const clampedPart = BETWEEN * (normals[places.clampedPart] ?? 0);
  const clampedPartWidth = widths[places.clampedPartWidth] ?? 0;
  let logMetal = Number.POSITIVE_INFINITY;
  let logPlastic = Number.POSITIVE_INFINITY;
  let logTurning = Number.POSITIVE_INFINITY;
  for (let mode = 0; mode < logBorne.length; mode += 1) {
    const alone = normals[own[mode] ?? 0] ?? 0;
    const followed = follows[mode];
    let borne =
      (logMedian[mode] ?? 0) + (perKnurlDiameter[mode] ?? 0) * knurlDiameter + (perWall[mode] ?? 0) * wall;
    const spread = deviation[mode] ?? 0;
    if (followed === FOLLOWS.knurl) borne += logBite + spread * knurl;
    else if (followed === FOLLOWS.host) borne += spread * hostWidth * (host + WITHIN * alone);
    else if (followed === FOLLOWS['clamped-part'])
      borne += spread * clampedPartWidth * (clampedPart + WITHIN * alone);
    else borne += spread * alone - (followed === FOLLOWS.torsion ? Math.log(torsion) : 0);
    logBorne[mode] = borne;
    if (turns[mode] === 1) logTurning = Math.min(logTurning, borne);
    else if (followed === FOLLOWS.metal || followed === FOLLOWS.torsion) logMetal = Math.min(logMetal, borne);
    else logPlastic = Math.min(logPlastic, borne);
  }
  const plastic = Math.min(Math.exp(logPlastic) - model.pull, Math.exp(logTurning) / into.inThread);
  into.weakestPlastic = plastic;
  into.weakest = Math.min(plastic, Math.exp(logMetal) - model.pull);
}

/** Share of the intended bite, 0 … 1: the straight line of holes/bore, for this joint's knurl and bore. */
function biteOf(model: ChanceModel, knurlDeviations: number, boreDeviations: number): number {
  const knurl = model.knurlDiameter + model.knurlDeviation * knurlDeviations;
  const bore = model.expectedBore + model.boreDeviation * boreDeviations;
  return Math.min(1, Math.max(0, (knurl - bore) / (model.knurlDiameter - model.intendedBore)));
}

/** Equivalent over tensile stress at a friction, [-]; see torque/yield-preload. */
const torsionOf = (model: ChanceModel, threadFriction: number): number =>
  Math.sqrt(1 + (model.torsionAtNone + model.torsionPerFriction * threadFriction) ** 2);
