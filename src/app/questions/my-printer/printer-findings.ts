import { boreMeasured } from '../../../core/holes/bore-measured.ts';
import type { HoleInstrument } from '../../../core/holes/hole-reading.ts';
import {
  couponDiameters,
  type NextCouponHole,
  nextCouponHole,
} from '../../../core/holes/next-coupon-hole.ts';
import type { MeasuredLength } from '../../../core/inserts/dimensions.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { entryFrom } from '../../../core/sources/derived.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { BEGIN_GAUGE } from './printer-edits.ts';

/** How far from the joint's hole a coupon hole is looked for, mm, and in which steps. */
const COUPON_REACH = 1.5;
const COUPON_STEP = 0.1;
const LEAST_COUPON = 1;
/** Unless the printer was read otherwise. */
const USUAL_INSTRUMENT: HoleInstrument = 'caliper-jaws';

/** What one more hole of a gauge is worth to this joint, read as the last one was; permissible error of the caliper, mm. */
export function nextHoleOf(
  permissibleError: number,
  printer: PrinterRecord | undefined,
  { joint, assessment }: { readonly joint: Joint; readonly assessment: JointAssessment },
): NextCouponHole {
  const { hole, dimensions } = assessment;
  const drawn = hole.drawn.value;
  const bore = readingOfCoupon(drawn, printer, permissibleError);
  return nextCouponHole(
    joint.holes.behaviour,
    {
      drawn: entryFrom(hole.drawn),
      pilotUncertainty: entryFrom(dimensions.pilotDiameter.standardUncertainty),
      window: hole.window,
    },
    {
      candidates: couponDiameters({
        least: Math.max(LEAST_COUPON, Number((drawn - COUPON_REACH).toFixed(1))),
        greatest: drawn + COUPON_REACH,
        step: COUPON_STEP,
      }),
      standardUncertainty: entryFrom(bore.standardUncertainty),
    },
  );
}

function readingOfCoupon(
  drawn: number,
  printer: PrinterRecord | undefined,
  permissibleError: number,
): MeasuredLength {
  const { jawFlat_mm, gaugeStep_mm } = printer ?? BEGIN_GAUGE;
  return boreMeasured({
    drawn,
    measured: [drawn],
    instrument: printer?.holes.at(-1)?.instrument ?? USUAL_INSTRUMENT,
    axis: 'vertical',
    permissibleError,
    jawFlat: jawFlat_mm,
    gaugeStep: gaugeStep_mm,
  });
}
