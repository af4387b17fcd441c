import { polymerAt } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { greatestServiceTemperature, REFERENCE_TEMPERATURE, strengthLeft } from '../host/temperature.ts';
import type { Insert } from '../inserts/insert.ts';
import { bestPreloadLeftAt, preloadLeftAt } from '../joint/preload-left.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { tighten } from '../joint/tightening.ts';
import { RETIGHTENING_HOURS } from '../relaxation/retightening.ts';
import type { Derived } from '../sources/derived.ts';

/** A share that is left, [-]: the careful end of what is known, what is expected, and the other end; all one if known. */
export interface Known {
  readonly careful: number;
  readonly expected: number;
  readonly best: number;
}

const knownOf = ({ value, range }: Derived): Known => ({
  careful: value,
  expected: range?.middle ?? value,
  best: range?.high ?? value,
});

/** The share at both ends of what is known, with the way to each. */
export interface KnownWays {
  readonly careful: Derived;
  readonly best: Derived;
}

/** Share of the preload that is left at a time, at a temperature. */
export interface PreloadPoint extends Known {
  readonly hours: number;
}

/** Preload over time at one temperature. */
export interface PreloadCurve {
  /** °C */
  readonly temperature: number;
  readonly points: readonly PreloadPoint[];
}

/** Times of the curve, h: half a decade apart from a tenth of an hour to ten years. */
const CURVE_HOURS: readonly number[] = Array.from({ length: 13 }, (_, index) => 0.1 * 10 ** (index / 2));
/** How shortly before a re-tightening the curve still falls, [-]. */
const JUST_BEFORE = 1 - 1e-9;

/** Times of the curve with both sides of every re-tightening, h. */
const hoursWith = (retightenings: number): readonly number[] =>
  [
    ...CURVE_HOURS,
    ...RETIGHTENING_HOURS.slice(0, retightenings).flatMap((hours) => [hours * JUST_BEFORE, hours]),
  ].sort((one, other) => one - other);

/**
 * Preload over time at room and at service temperature, with the re-tightenings of the joint and what is known of creep.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @returns one curve a temperature, from 0.1 h to 100,000 h
 * @source own-model constant length of the loop
 * @source findley-iso-899 power law of creep, extrapolated beyond 1000 h
 */
export function preloadCurves(joint: AnswerableJoint, insert: Insert): readonly PreloadCurve[] {
  const temperatures = [...new Set([REFERENCE_TEMPERATURE, joint.loads.serviceTemperature])];
  return temperatures.map((temperature) => {
    const then = inServiceAt(joint, temperature);
    const { loop } = tighten(then, insert);
    const left = (hours: number) => knownOf(preloadLeftAt(loop, then.loads, hours));
    const times = hoursWith(joint.loads.retightenings);
    return { temperature, points: times.map((hours) => ({ hours, ...left(hours) })) };
  });
}

const inServiceAt = (joint: AnswerableJoint, serviceTemperature: number): AnswerableJoint => ({
  ...joint,
  loads: { ...joint.loads, serviceTemperature },
});

/**
 * The way to one point of a curve of preloadCurves.
 *
 * @param joint - a joint that may be answered
 * @param insert - its insert
 * @param at - temperature of the curve [°C], time since assembly [h]
 * @returns share of the preload that is left [-]
 * @source own-model constant length of the loop
 */
export function preloadWays(
  joint: AnswerableJoint,
  insert: Insert,
  { temperature, hours }: { readonly temperature: number; readonly hours: number },
): KnownWays {
  const then = inServiceAt(joint, temperature);
  const { loop } = tighten(then, insert);
  return {
    careful: preloadLeftAt(loop, then.loads, hours),
    best: bestPreloadLeftAt(loop, then.loads, hours),
  };
}

/** Strength of a material at a temperature as a share of that at 23 °C. */
export interface StrengthPoint extends Known {
  /** °C */
  readonly temperature: number;
}

/** Points of the strength curve. */
const STRENGTH_POINTS = 24;

/**
 * Strength over temperature, from 23 °C to the warmest service that is answered, with what is known of it.
 *
 * @param material - the host's polymer
 * @returns points at even steps
 * @source own-model straight line to softening, remembered ratios
 */
export function strengthCurve(material: PrintedMaterial): readonly StrengthPoint[] {
  const span = greatestServiceTemperature(material) - REFERENCE_TEMPERATURE;
  return Array.from({ length: STRENGTH_POINTS + 1 }, (_, index) => {
    const temperature = REFERENCE_TEMPERATURE + (span * index) / STRENGTH_POINTS;
    return { temperature, ...knownOf(strengthLeft(material, temperature)) };
  });
}

/**
 * The way to one point of the curve of strengthCurve.
 *
 * @param material - the host's polymer
 * @param temperature - of the point [°C]
 * @returns share of the strength that is left [-]
 * @source own-model straight line to softening, remembered ratios
 */
export const strengthWays = (material: PrintedMaterial, temperature: number): KnownWays => ({
  careful: strengthLeft(material, temperature),
  best: strengthLeft(polymerAt(material, 'high'), temperature),
});
