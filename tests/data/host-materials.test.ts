import { describe, expect, test } from 'vitest';
import type { MaterialValue, PrintedMaterial } from '../../src/core/host/material.ts';
import {
  ABS,
  HOST_MATERIALS,
  PA_CF,
  PA6,
  PC,
  PETG,
  PLA,
  RESIN,
  TPU_95A,
} from '../../src/data/host-materials.ts';
import { expectPublished } from '../support/published.ts';

const printed = HOST_MATERIALS.filter((material): material is PrintedMaterial => material.melts);

/** Every value of a row with its column's name. */
function valuesOf(material: PrintedMaterial): readonly (readonly [column: string, value: MaterialValue])[] {
  return [
    ['tensileInPlane', material.tensileInPlane],
    ['tensileAcrossLayers', material.tensileAcrossLayers],
    ['shearBetweenLayers', material.shearBetweenLayers],
    ['compressive', material.compressive],
    ['modulusInPlane', material.modulusInPlane],
    ['poissonRatio', material.poissonRatio],
    ['softening', material.softening],
    ['serviceMax', material.serviceMax],
    ['creepRatio1h', material.creepRatio1h],
    ['creepRatio24h', material.creepRatio24h],
    ['creepRatio1000h', material.creepRatio1000h],
    ...material.strengthRatios.map(({ temperature, ratio }) => [`ratio at ${temperature}`, ratio] as const),
  ];
}

describe('HOST_MATERIALS, derived values against their inputs (printed-materials)', () => {
  test.each([
    ['PETG', PETG, 28, '16'],
    ['PC', PC, 38, '22'],
    ['PA-CF', PA_CF, 19.3, '11'],
    ['TPU 95A', TPU_95A, 14, '8'],
  ])(
    '%s shears between layers at 0.577 of its tensile strength across them',
    (_name, material, across, shear) => {
      expect(material.tensileAcrossLayers.value).toBe(across);
      expect(material.shearBetweenLayers.value).toBe(Number(shear));
      expectPublished(0.577 * across, shear);
    },
  );

  test('PLA shears at 0.577 of an interlayer specimen, 22.8 with gaps and 33.75 without', () => {
    expect(PLA.shearBetweenLayers).toMatchObject({ value: 13.2, low: 13.2, high: 19.5 });
    expectPublished(0.577 * 22.8, '13.2');
    expectPublished(0.577 * 33.75, '19.5');
  });

  test('ABS shears at 0.9 · 0.577 of the bulk 40.4 MPa, at the least at 0.577 of its strength across layers', () => {
    expect(ABS.shearBetweenLayers).toMatchObject({ value: 21, low: 13 });
    expectPublished(0.9 * 0.577 * 40.4, '21');
    expectPublished(0.577 * ABS.tensileAcrossLayers.value, '13');
  });

  test('PC creeps from 2400 to 2200 in 1 h and to 1900 MPa in 1000 h, by the power law between', () => {
    expectPublished(2200 / 2400, String(PC.creepRatio1h.value));
    expectPublished(1 / (1 + 0.0909 * 24 ** 0.154), String(PC.creepRatio24h.value));
    expectPublished(1900 / 2400, String(PC.creepRatio1000h.value));
  });

  test('PA6 creeps as conditioned PA66, 1400 MPa still at 1 h and 930 at 1000 h, linear in log time between', () => {
    expect(PA6.creepRatio1h.value).toBe(1400 / 1400);
    expectPublished(1 - (1 - 930 / 1400) * (Math.log10(24) / 3), String(PA6.creepRatio24h.value));
    expectPublished(930 / 1400, String(PA6.creepRatio1000h.value));
  });

  test('TPU, of which no compressive strength is known, takes the tensile one and says so', () => {
    expect(TPU_95A.compressive).toEqual({
      value: TPU_95A.tensileInPlane.value,
      provenance: 'derived',
      lowConfidence: true,
    });
  });
});

describe('HOST_MATERIALS, laws', () => {
  test('are the eleven in their order, each id once', () => {
    const ids = ['pla', 'pla-plus', 'petg', 'abs', 'asa', 'pa6', 'pa12', 'pa-cf', 'pc', 'tpu-95a', 'resin'];
    expect(HOST_MATERIALS.map(({ id }) => id)).toEqual(ids);
  });

  test.each(printed)('$id keeps every value positive and within its bounds', (material) => {
    for (const [column, { value, low, high }] of valuesOf(material)) {
      expect(value, column).toBeGreaterThan(0);
      expect(value, column).toBeGreaterThanOrEqual(low ?? value);
      expect(value, column).toBeLessThanOrEqual(high ?? value);
      expect(low === undefined, `${column}: both bounds or none`).toBe(high === undefined);
    }
  });

  test.each(printed)(
    '$id is weaker across layers than in plane, and weaker in shear than in tension',
    (material) => {
      expect(material.tensileAcrossLayers.value).toBeLessThan(material.tensileInPlane.value);
      expect(material.shearBetweenLayers.value).toBeLessThan(material.tensileAcrossLayers.value);
    },
  );

  test.each(printed)('$id is no weaker in compression than in tension', (material) => {
    expect(material.compressive.value).toBeGreaterThanOrEqual(material.tensileInPlane.value);
  });

  test.each(printed)('$id is compressible: Poisson ratio between 0.3 and 0.5', ({ poissonRatio }) => {
    expect(poissonRatio.value).toBeGreaterThan(0.3);
    expect(poissonRatio.value).toBeLessThan(0.5);
  });

  test.each(printed)('$id softens above its service temperature, and that above 23 °C', (material) => {
    expect(material.softening.value).toBeGreaterThan(material.serviceMax.value);
    expect(material.serviceMax.value).toBeGreaterThan(23);
  });

  test.each(printed)('$id creeps on: ratios fall with time and stay within 0 and 1', (material) => {
    expect(material.creepRatio1h.value).toBeLessThanOrEqual(1);
    expect(material.creepRatio24h.value).toBeLessThan(material.creepRatio1h.value);
    expect(material.creepRatio1000h.value).toBeLessThan(material.creepRatio24h.value);
  });

  test.each(printed)(
    '$id loses strength with every temperature, from less than 1 at 40 °C',
    ({ strengthRatios }) => {
      const temperatures = strengthRatios.map(({ temperature }) => temperature);
      const ratios = strengthRatios.map(({ ratio }) => ratio.value);
      expect(temperatures[0]).toBe(40);
      expect(temperatures).toEqual([...new Set(temperatures)].sort((a, b) => a - b));
      expect(ratios).toEqual([...new Set(ratios)].sort((a, b) => b - a));
      expect(ratios[0]).toBeLessThan(1);
    },
  );

  test.each(printed)('$id marks every strength ratio as remembered and weak', ({ strengthRatios }) => {
    for (const { ratio } of strengthRatios) {
      expect(ratio).toMatchObject({ provenance: 'from-memory', lowConfidence: true });
    }
  });

  test.each(printed)('$id calls no read value one of low confidence', (material) => {
    for (const [column, value] of valuesOf(material)) {
      expect(value.provenance === 'read' && value.lowConfidence === true, column).toBe(false);
    }
  });

  test('soften by heat deflection where semi-crystalline, by Vicat where an elastomer, else by glass transition', () => {
    const kinds = Object.fromEntries(printed.map(({ id, softening }) => [id, softening.kind]));
    expect(kinds).toEqual({
      pla: 'glass-transition',
      'pla-plus': 'glass-transition',
      petg: 'glass-transition',
      abs: 'glass-transition',
      asa: 'glass-transition',
      pa6: 'heat-deflection',
      pa12: 'heat-deflection',
      'pa-cf': 'heat-deflection',
      pc: 'glass-transition',
      'tpu-95a': 'vicat',
    });
  });

  test('know an iron temperature of PLA 225, PETG 245 and ABS 265 °C only (trade-practice)', () => {
    const known = printed.flatMap(({ id, ironTemperature }) =>
      ironTemperature ? [[id, ironTemperature.value]] : [],
    );
    expect(known).toEqual([
      ['pla', 225],
      ['petg', 245],
      ['abs', 265],
    ]);
  });

  test('are cracked by threadlocker in ABS and PC, elastic in TPU, and unmelting in resin, and nowhere else', () => {
    expect(printed.filter((row) => row.crackedByThreadlocker).map(({ id }) => id)).toEqual(['abs', 'pc']);
    expect(printed.filter((row) => row.elastomer).map(({ id }) => id)).toEqual(['tpu-95a']);
    expect(HOST_MATERIALS.filter((row) => !row.melts)).toEqual([RESIN]);
  });
});
