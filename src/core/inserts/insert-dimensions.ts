import { type Derived, entryFrom } from '../sources/derived.ts';
import type { InsertDimensions, MeasuredLength } from './dimensions.ts';
import type { Insert } from './insert.ts';
import { measuredLength } from './measured-length.ts';

/** Share of the knurl diameter that pilot and grooves take from the length, where nobody measured it (estimate). */
const UNKNURLED_LENGTH_PER_KNURL = 0.28;

/**
 * Knurled length of an insert whose knurl was not measured apart.
 *
 *     Lk = L − 0.28 · Dk
 *
 * For inserts with a plain pilot and a groove or two. Measure the knurl where the insert looks different.
 *
 * @param length - length over all L [mm], ≥ 0.4·Dk
 * @param knurlDiameter - knurl diameter Dk [mm]
 * @returns Lk [mm]
 * @source own-model estimate from the inserts at hand
 * @example L 5, Dk 5 mm gives 3.6 mm
 */
export const estimatedKnurledLength = (
  length: MeasuredLength,
  knurlDiameter: MeasuredLength,
): MeasuredLength => new EstimatedKnurledLength(length, knurlDiameter);

class EstimatedKnurledLength implements MeasuredLength {
  readonly readings = 0;
  readonly estimate: Derived;
  private readonly length: MeasuredLength;
  private readonly knurlDiameter: MeasuredLength;

  constructor(length: MeasuredLength, knurlDiameter: MeasuredLength) {
    this.length = length;
    this.knurlDiameter = knurlDiameter;
    const [L, Dk] = [length.estimate, knurlDiameter.estimate];
    this.estimate = {
      symbol: 'L_k',
      value: L.value - UNKNURLED_LENGTH_PER_KNURL * Dk.value,
      unit: 'mm',
      formula: 'L − 0.28 · D_k',
      entries: [entryFrom(L), entryFrom(Dk)],
      source: 'own-model',
      standing: 'estimate',
    };
  }

  get standardUncertainty(): Derived {
    const [ofLength, ofKnurl] = [this.length.standardUncertainty, this.knurlDiameter.standardUncertainty];
    return {
      symbol: 'u(L_k)',
      value: Math.hypot(ofLength.value, UNKNURLED_LENGTH_PER_KNURL * ofKnurl.value),
      unit: 'mm',
      formula: '√(u(L)² + (0.28 · u(D_k))²)',
      entries: [entryFrom(ofLength), entryFrom(ofKnurl)],
      source: 'jcgm-100',
      standing: 'published',
    };
  }
}

/**
 * What the readings of an insert come to.
 *
 * @param insert - readings of knurl diameter Dk, pilot diameter Dp, length L and perhaps knurled length Lk [mm]
 * @returns each dimension [mm] with its standard uncertainty; `readings` is 0 for an estimated knurled length
 * @source jcgm-100 combination of readings
 * @source own-model knurled length where not measured
 */
export function insertDimensions(insert: Insert): InsertDimensions {
  const knurlDiameter = measuredLength('D_k', insert.knurlDiameter);
  const length = measuredLength('L', insert.length);
  return {
    knurlDiameter,
    pilotDiameter: measuredLength('D_p', insert.pilotDiameter),
    length,
    knurledLength: insert.knurledLength
      ? measuredLength('L_k', insert.knurledLength)
      : estimatedKnurledLength(length, knurlDiameter),
  };
}
