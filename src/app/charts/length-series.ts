import type { Insert } from '../../core/inserts/insert.ts';
import { insertDimensions } from '../../core/inserts/insert-dimensions.ts';
import { GREATEST_LENGTH_IN_DIAMETERS } from '../../core/inserts/insert-faults.ts';
import type { JointAssessment } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import type { HoldBand, LengthPoint } from '../../core/recommend/length-curve.ts';
import type { Recommendation } from '../../core/recommend/recommendation.ts';

type Answered = Extract<Recommendation, { readonly kind: 'answered' }>;

/** An insert of the drawer on the chart of its diameter. */
export interface OwnPoint {
  readonly insertId: string;
  readonly length: number;
  readonly median: number;
}

/** What is held at one length. */
export type BandPoint = HoldBand & Pick<LengthPoint, 'length'>;

/** One knurl diameter of the drawer. */
export interface Panel<Point extends BandPoint = LengthPoint> {
  readonly knurlDiameter: number;
  readonly isChosen: boolean;
  /** The insert whose knurl and pilot stand for the diameter. */
  readonly model: Insert;
  readonly points: readonly Point[];
  readonly own: readonly OwnPoint[];
}

/** Knurls that differ by less are one diameter, mm. */
const SAME_DIAMETER = 0.06;
/** Whether a knurl is of the diameter of a panel. */
export const isOfPanel = (panel: Pick<Panel, 'knurlDiameter'>, knurlDiameter: number): boolean =>
  Math.abs(panel.knurlDiameter - knurlDiameter) < SAME_DIAMETER;
const MOST_PANELS = 3;
const SAMPLES = 13;
/** How far beyond the drawer's lengths the curves run. */
const SHORTER = 0.7;
const LONGER = 1.25;

interface Family {
  readonly knurlDiameter: number;
  readonly inserts: readonly Insert[];
  readonly model: Insert;
}

const knurlOf = (insert: Insert) => insertDimensions(insert).knurlDiameter.estimate.value;
const lengthOf = (insert: Insert) => insertDimensions(insert).length.estimate.value;

/** Inserts of the joint's thread by knurl diameter, the chosen one's first, then by their best rank. */
function familiesOf(drawer: readonly Insert[], order: readonly string[]): readonly Family[] {
  const families: Family[] = [];
  const byOrder = order.flatMap((id) => drawer.find((insert) => insert.id === id) ?? []);
  for (const insert of byOrder) {
    const knurlDiameter = knurlOf(insert);
    const index = families.findIndex((one) => Math.abs(one.knurlDiameter - knurlDiameter) < SAME_DIAMETER);
    const family = families[index];
    if (family === undefined) families.push({ knurlDiameter, inserts: [insert], model: insert });
    else families[index] = { ...family, inserts: [...family.inserts, insert] };
  }
  return families.slice(0, MOST_PANELS);
}

/** Evenly spaced lengths that cover the drawer's own, mm, to a tenth. */
function lengthsFor(families: readonly Family[], greatest: number): readonly number[] {
  const lengths = families.flatMap(({ inserts }) => inserts.map(lengthOf));
  const from = Math.floor(SHORTER * Math.min(...lengths) * 2) / 2;
  const to = Math.min(greatest, Math.ceil(LONGER * Math.max(...lengths) * 2) / 2);
  return Array.from({ length: SAMPLES }, (_, index) => from + ((to - from) * index) / (SAMPLES - 1));
}

const knurlMedianOf = ({ limits }: JointAssessment): number | undefined =>
  limits.find(({ mode }) => mode === 'knurl-shear')?.capacity.median.value;

/** What pull-out and torque come to over the insert's length, one panel a diameter of the drawer. */
export function lengthPanels(
  given: {
    readonly joint: Joint;
    readonly drawer: readonly Insert[];
    readonly recommendation: Answered;
    readonly chosenInsertId: string;
  },
  curveOf: (insert: Insert, lengths: readonly number[]) => readonly LengthPoint[],
): readonly Panel[] {
  const { joint, drawer, recommendation, chosenInsertId } = given;
  const ofThread = drawer.filter((insert) => insert.thread.id === joint.screw.thread.id);
  const rankedIds = recommendation.ranked.map(({ assessment }) => assessment.insertId);
  const order = [...new Set([chosenInsertId, ...rankedIds, ...ofThread.map(({ id }) => id)])];
  const families = familiesOf(ofThread, order);
  if (families.length === 0) return [];
  const lengths = lengthsFor(families, GREATEST_LENGTH_IN_DIAMETERS * joint.screw.thread.nominalDiameter);
  const medians = new Map(
    [...recommendation.ranked, ...recommendation.rejected].flatMap(({ assessment }) =>
      assessment ? [[assessment.insertId, knurlMedianOf(assessment)] as const] : [],
    ),
  );
  return families.map(({ knurlDiameter, inserts, model }) => ({
    knurlDiameter,
    isChosen: inserts.some(({ id }) => id === chosenInsertId),
    model,
    points: curveOf(model, lengths),
    own: inserts.flatMap((insert) => {
      const median = medians.get(insert.id);
      return median === undefined ? [] : [{ insertId: insert.id, length: lengthOf(insert), median }];
    }),
  }));
}
