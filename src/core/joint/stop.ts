import { temperatureAt } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { greatestServiceTemperature } from '../host/temperature.ts';
import type { Stop } from './assessment.ts';
import type { Joint } from './joint.ts';

/** A joint whose host melts and whose use may be answered. */
export type AnswerableJoint = Joint & { readonly host: { readonly material: PrintedMaterial } };

/**
 * Why a joint is not answered at all, or undefined.
 *
 * Stopped: uses that endanger people; hosts that do not melt; service within 10 K of softening, of the host and of a
 * printed clamped part; of a little known softening temperature the low end counts. The stop is no setting.
 *
 * @param joint - any joint that the door admits
 * @returns the stop with its facts
 * @source own-model limits of what is answered
 * @example overhead use gives use-endangers-people
 */
export function stopOf(joint: Joint): Stop | undefined {
  if (joint.use !== 'general') return { code: 'use-endangers-people', use: joint.use };
  const { material } = joint.host;
  if (!material.melts) return { code: 'host-does-not-melt', material: material.name };
  const polymers =
    joint.clamped.material.kind === 'printed' ? [material, joint.clamped.material.polymer] : [material];
  const { serviceTemperature } = joint.loads;
  const softest = polymers.find((polymer) => serviceTemperature > greatestServiceTemperature(polymer));
  if (!softest) return undefined;
  return {
    code: 'too-near-softening',
    material: softest.name,
    serviceTemperature,
    softening: temperatureAt(softest.softening, 'low'),
    greatest: greatestServiceTemperature(softest),
    ...(softest.softening.lowConfidence === true ? { atBest: atBest(softest) } : {}),
  };
}

/** Where a polymer softens and how warm it could be answered, if it is as good as it may be, °C. */
const atBest = (polymer: PrintedMaterial) => ({
  softening: temperatureAt(polymer.softening, 'high'),
  greatest: greatestServiceTemperature(polymer, 'high'),
});

/** A joint admitted to the calculation, or stopped. */
export type Admission =
  | { readonly kind: 'admitted'; readonly joint: AnswerableJoint }
  | { readonly kind: 'stopped'; readonly stop: Stop };

/**
 * Admits a joint to the calculation, or stops it with the reason.
 *
 * @param joint - any joint that the door admits
 * @returns the joint, known to melt and to be cool enough; or the stop of stopOf
 * @source own-model limits of what is answered
 */
export function admit(joint: Joint): Admission {
  const stop = stopOf(joint);
  if (stop !== undefined) return { kind: 'stopped', stop };
  const { material } = joint.host;
  if (!material.melts)
    return { kind: 'stopped', stop: { code: 'host-does-not-melt', material: material.name } };
  return { kind: 'admitted', joint: { ...joint, host: { ...joint.host, material } } };
}
