import { CREEP_POINTS } from '../relaxation/findley.ts';
import type { NoticeCode } from './assessment.ts';
import type { NoticeRule } from './notice-rule.ts';

/** What to know about the plastic, its warmth and its time. */
export const MATERIAL_NOTICES = {
  'above-service-temperature': ({ joint }) => {
    const { serviceTemperature } = joint.loads;
    const { material: lid } = joint.clamped;
    const polymers = lid.kind === 'printed' ? [joint.host.material, lid.polymer] : [joint.host.material];
    const warm = polymers.find(({ serviceMax }) => serviceTemperature > serviceMax.value);
    return warm && { temperature: serviceTemperature, greatest: warm.serviceMax.value, material: warm.name };
  },
  'elastomer-host': ({ joint }) =>
    joint.host.material.elastomer ? { material: joint.host.material.name } : undefined,
  'threadlocker-cracks-host': ({ joint }) =>
    joint.host.material.crackedByThreadlocker ? { material: joint.host.material.name } : undefined,
  'strengths-low-confidence': ({ joint }) => {
    const { tensileInPlane, tensileAcrossLayers, name } = joint.host.material;
    const weak = [tensileInPlane, tensileAcrossLayers].some((row) => row.provenance === 'from-memory');
    return weak ? { material: name } : undefined;
  },
  'creep-extrapolated': ({ joint, found }) =>
    joint.loads.duration > CREEP_POINTS.last && found.preloadLeft.value < 1
      ? { hours: joint.loads.duration, known: CREEP_POINTS.last }
      : undefined,
} as const satisfies Partial<Record<NoticeCode, NoticeRule>>;
