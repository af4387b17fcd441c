import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { MaterialValue, PrintedMaterial } from '../../src/core/host/material.ts';
import { HOST_MATERIALS } from '../../src/data/host-materials.ts';

/** The collected values that the table is to hold: one line a value, its digits as collected, an empty bound unknown. */
const [header, ...collected] = readFileSync(new URL('./host-material-values.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split(','));

function columnsOf(material: PrintedMaterial): Readonly<Record<string, MaterialValue>> {
  const { tensileInPlane, tensileAcrossLayers, shearBetweenLayers, compressive, modulusInPlane } = material;
  const { poissonRatio, softening, serviceMax, creepRatio1h, creepRatio24h, creepRatio1000h } = material;
  const ratios: Record<string, MaterialValue> = {};
  for (const { temperature, ratio } of material.strengthRatios) ratios[`strengthRatio${temperature}`] = ratio;
  return {
    tensileInPlane,
    tensileAcrossLayers,
    shearBetweenLayers,
    compressive,
    modulusInPlane,
    poissonRatio,
    softening,
    serviceMax,
    creepRatio1h,
    creepRatio24h,
    creepRatio1000h,
    ...ratios,
  };
}

const numberOf = (text: string | undefined) => (text === undefined || text === '' ? undefined : Number(text));

describe('HOST_MATERIALS against the collected values (printed-materials)', () => {
  const printed = HOST_MATERIALS.filter((material): material is PrintedMaterial => material.melts);

  test('are collected in the columns material, column, value, low, high and provenance', () => {
    expect(header).toEqual(['material', 'column', 'value', 'low', 'high', 'provenance']);
  });

  test.each(printed)('hold each value of $id with its bounds and its provenance', (material) => {
    const lines = collected.filter(([id]) => id === material.id);
    expect(lines.length).toBeGreaterThan(0);
    for (const [, column = '', value, low, high, provenance] of lines) {
      const row = columnsOf(material)[column];
      expect(row?.value, column).toBe(numberOf(value));
      expect(row?.low, `${column}, low`).toBe(numberOf(low));
      expect(row?.high, `${column}, high`).toBe(numberOf(high));
      expect(row?.provenance, `${column}, provenance`).toBe(provenance);
    }
  });

  test.each(printed)(
    'hold nothing of $id that was not collected, but for the stand-in of TPU',
    (material) => {
      const known = collected.filter(([id]) => id === material.id).map(([, column]) => column);
      const uncollected = Object.keys(columnsOf(material)).filter((column) => !known.includes(column));
      expect(uncollected).toEqual(material.id === 'tpu-95a' ? ['compressive'] : []);
    },
  );

  test.each(printed)(
    'mark a remembered value of $id as weak unless it is an often-quoted one',
    (material) => {
      const weak = Object.entries(columnsOf(material)).filter(([, row]) => row.lowConfidence === true);
      const strong = Object.entries(columnsOf(material))
        .filter(([, row]) => row.provenance === 'from-memory' && row.lowConfidence !== true)
        .map(([column]) => column);
      expect(weak.length).toBeGreaterThan(0);
      expect(strong).toEqual(OFTEN_QUOTED[material.id] ?? []);
    },
  );
});

const OFTEN_QUOTED: Readonly<Record<string, readonly string[]>> = {
  pla: ['compressive', 'serviceMax'],
  'pla-plus': ['poissonRatio'],
  petg: ['poissonRatio', 'serviceMax'],
  abs: ['tensileInPlane', 'modulusInPlane'],
  asa: ['poissonRatio', 'serviceMax'],
  pa6: ['tensileInPlane', 'modulusInPlane', 'serviceMax'],
  pa12: ['tensileInPlane', 'modulusInPlane', 'poissonRatio'],
  'tpu-95a': ['poissonRatio'],
};
