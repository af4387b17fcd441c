import type { HoleAxis } from '../core/holes/hole-reading.ts';
import { type HoleReadingFault, holeReadingFaults } from '../core/holes/reading-faults.ts';
import { compensationRule, curveThatApplies } from '../core/holes/slicer-compensation.ts';
import type { Joint } from '../core/joint/joint.ts';
import type { JointDocument } from './document.ts';
import { calibrationAlong, readingsAlong } from './printer-calibration.ts';
import type { Refusal } from './refusal.ts';
import type { ResolvedDocument } from './resolve.ts';

/** The axis of a joint's hole on the printer. */
export const holeAxisOf = (joint: JointDocument['joint']): HoleAxis =>
  joint.host.axis === 'along-build' ? 'vertical' : 'horizontal';

/** A joint that knows how its printer closes holes. */
export function withPrinter(document: JointDocument, { joint, printer }: ResolvedDocument): Joint {
  if (printer === undefined) return joint;
  const prior = joint.holes.behaviour;
  const { permissibleError_mm: permissibleError } = document.caliper;
  const { calibration } = calibrationAlong(holeAxisOf(document.joint), printer, { prior, permissibleError });
  const rule = compensationRule(document.joint.holes.compensation, printer.gaugeCompensation);
  // Without readings nothing was printed that a slicer could have changed.
  if (calibration.count === 0) return joint;
  return {
    ...joint,
    holes: {
      ...joint.holes,
      behaviour: curveThatApplies(rule, { readings: calibration.behaviour, prior }),
      compensation: rule.error === 'whole' ? 'in-cad' : 'in-slicer',
      printer: {
        name: printer.name,
        material: { id: printer.material, name: printer.material },
        layerHeight: printer.layerHeight_mm,
        calibration,
        rule,
      },
    },
  };
}

const KEY_OF_FIELD = { drawn: 'drawn_mm', measured: 'measured_mm', both: 'measured_mm' } as const;

function refusalOf(fault: HoleReadingFault, path: string): Refusal {
  switch (fault.code) {
    case 'looks-like-inches':
      return {
        path: `${path}.${KEY_OF_FIELD[fault.field]}`,
        code: 'hole-looks-like-inches',
        facts: { value: fault.value, inMillimetres: fault.inMillimetres },
      };
    case 'looks-like-radius':
      return {
        path: `${path}.${KEY_OF_FIELD[fault.field]}`,
        code: 'hole-looks-like-radius',
        facts: { value: fault.value, diameter: fault.diameter },
      };
    case 'drawn-and-measured-swapped':
      return {
        path: `${path}.measured_mm`,
        code: 'hole-swapped',
        facts: { drawn: fault.drawn, measured: fault.measured, others: fault.others },
      };
    case 'error-implausible':
      return {
        path: `${path}.measured_mm`,
        code: 'hole-error-implausible',
        facts: { drawn: fault.drawn, measured: fault.measured, error: fault.error, limit: fault.limit },
      };
    case 'too-few-facets':
      return {
        path: `${path}.facets`,
        code: 'below-limit',
        facts: { value: fault.facets, least: fault.least },
      };
  }
}

/** What is wrong with the readings of any printer of a document, each at its key with its likely cause. */
export function printerRefusals({ printers, caliper }: JointDocument): readonly Refusal[] {
  return printers.flatMap((printer, at) =>
    (['vertical', 'horizontal'] as const).flatMap((axis) => {
      const found = readingsAlong(axis, printer, caliper.permissibleError_mm);
      return holeReadingFaults(found.map(({ reading }) => reading)).flatMap((fault, index) =>
        fault ? [refusalOf(fault, `printers.${at}.holes.${found[index]?.place}`)] : [],
      );
    }),
  );
}
