import type { ClampedMaterial } from '../core/host/material.ts';
import { ABS, ASA, PA_CF, PA6, PA12, PC, PETG, PLA, PLA_PLUS, TPU_95A } from './host-materials.ts';

/**
 * What a clamped part may be made of. The limiting pressure is read for each metal, MPa;
 * the moduli are remembered (aluminium, stainless steel) or the middle of a read range (steel, 200 to 210 GPa).
 */
export const CLAMPED_MATERIALS: readonly ClampedMaterial[] = [
  {
    kind: 'metal',
    id: 'aluminium',
    name: 'Aluminium EN AW-6082',
    limitingPressure: 260,
    modulus: 70000,
    source: 'vdi-2230',
  },
  {
    kind: 'metal',
    id: 'steel',
    name: 'Steel S235',
    limitingPressure: 490,
    modulus: 205000,
    source: 'vdi-2230',
  },
  {
    kind: 'metal',
    id: 'stainless',
    name: 'Stainless steel X5CrNi18-12',
    limitingPressure: 630,
    modulus: 200000,
    source: 'vdi-2230',
  },
  { kind: 'printed', id: 'pla', name: 'PLA, printed', polymer: PLA },
  { kind: 'printed', id: 'pla-plus', name: 'PLA+ (toughened), printed', polymer: PLA_PLUS },
  { kind: 'printed', id: 'petg', name: 'PETG, printed', polymer: PETG },
  { kind: 'printed', id: 'abs', name: 'ABS, printed', polymer: ABS },
  { kind: 'printed', id: 'asa', name: 'ASA, printed', polymer: ASA },
  { kind: 'printed', id: 'pa6', name: 'PA6, conditioned, printed', polymer: PA6 },
  { kind: 'printed', id: 'pa12', name: 'PA12, printed', polymer: PA12 },
  { kind: 'printed', id: 'pa-cf', name: 'PA-CF (short fibre), printed', polymer: PA_CF },
  { kind: 'printed', id: 'pc', name: 'PC, printed', polymer: PC },
  { kind: 'printed', id: 'tpu-95a', name: 'TPU 95A, printed', polymer: TPU_95A },
];
