import type { FrictionCondition } from '../core/screws/screw.ts';

/**
 * Friction of a steel screw in a brass thread, under its head on metal, and under its head on plastic.
 *
 * No published table has these pairs for screws: the ranges lie within the classes of VDI 2230 (steel on steel) and
 * the read values of steel on polyamide (0.32 to 0.45 dry, 0.10 lubricated) and on ABS (0.35), so all are estimates.
 * as-delivered spans class B (0.08–0.16) and class C (0.14–0.24) from 0.10 on; greased is class B.
 * The textbook 0.51 of brass on steel is for clean degreased faces, which screws are not.
 */
export const FRICTION_CONDITIONS: readonly FrictionCondition[] = [
  {
    id: 'as-delivered',
    thread: { low: 0.1, high: 0.24 },
    headOnMetal: { low: 0.1, high: 0.24 },
    headOnPlastic: { low: 0.2, high: 0.45 },
    source: 'friction-judgement',
    standing: 'estimate',
  },
  {
    id: 'dry',
    thread: { low: 0.14, high: 0.3 },
    headOnMetal: { low: 0.14, high: 0.24 },
    headOnPlastic: { low: 0.2, high: 0.45 },
    source: 'friction-judgement',
    standing: 'estimate',
  },
  {
    id: 'oiled',
    thread: { low: 0.1, high: 0.17 },
    headOnMetal: { low: 0.08, high: 0.16 },
    headOnPlastic: { low: 0.1, high: 0.3 },
    source: 'friction-judgement',
    standing: 'estimate',
  },
  {
    id: 'greased',
    thread: { low: 0.08, high: 0.16 },
    headOnMetal: { low: 0.08, high: 0.16 },
    headOnPlastic: { low: 0.1, high: 0.3 },
    source: 'vdi-2230',
    standing: 'estimate',
  },
];
