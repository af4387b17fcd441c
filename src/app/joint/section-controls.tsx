import type { ReactNode } from 'react';
import type { JointAssessment } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { screwLengthWays } from '../../core/joint/screw-length-ways.ts';
import type { Derived } from '../../core/sources/derived.ts';
import type { JointDocument } from '../../storage/document.ts';
import { derivedText, diameterNumber, lengthNumber, significantText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import type { DimensionId } from '../drawing/dimension-ids.ts';
import { QUANTITIES } from '../state/quantities.ts';
import { DocumentQuantity } from './document-quantity.tsx';
import { MeasuredControl } from './measured-control.tsx';
import { ScrewLengthChoice } from './screw-length-choice.tsx';

export const DRAWING_SLOT = 'drawing';
const PLACE = 'drawing';

type Host = JointDocument['joint']['host'];
type Controls = Partial<Record<DimensionId, ReactNode>>;

function follows(derived: Derived, name: string, text: string, ...steps: readonly Derived[]) {
  return (
    <ComputedValue
      derived={steps.length === 0 ? derived : [...steps, derived]}
      text={text}
      label={`${name}, ${derivedText(derived)}`}
      slot={DRAWING_SLOT}
    />
  );
}

const yours = (name: keyof typeof QUANTITIES) => (
  <DocumentQuantity quantity={QUANTITIES[name]} place={PLACE} layout="bare" />
);

/** What the numbers on the section come from. */
export interface Drawn {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

/** What stands on the section in the place of its numbers: fields for what is given, buttons for what follows. */
export function sectionControls({ joint, assessment }: Drawn, host: Host, insertIndex: number): Controls {
  const { hole } = assessment;
  return {
    'clamped-thickness': yours('clampedThickness'),
    gap: yours('gap'),
    sunk: yours('sunk'),
    'host-thickness': yours('hostThickness'),
    'clearance-hole': yours('clearanceHole'),
    'layer-height': yours('layerHeight'),
    'line-width': yours('lineWidth'),
    infill: yours('infill'),
    'insert-length': (
      <MeasuredControl insert={insertIndex} reading="length_mm" place={PLACE} slot={DRAWING_SLOT} />
    ),
    'knurl-diameter': (
      <MeasuredControl insert={insertIndex} reading="knurlDiameter_mm" place={PLACE} slot={DRAWING_SLOT} />
    ),
    'screw-choice': <ScrewLengthChoice place={PLACE} layout="bare" />,
    well: follows(hole.well, 'Well below the insert', lengthNumber(hole.well.value)),
    floor: follows(hole.floor, 'Floor under the hole', lengthNumber(hole.floor.value)),
    'hole-depth': follows(
      hole.depth,
      hole.existing ? 'Depth of the hole' : 'Depth to draw',
      lengthNumber(hole.depth.value),
    ),
    'bore-printed': follows(hole.boreAsPrinted, 'Bore as printed', diameterNumber(hole.boreAsPrinted.value)),
    'bore-drawn': follows(
      hole.drawn,
      hole.existing ? 'Hole that is there' : 'Hole to draw',
      diameterNumber(hole.drawn.value),
      hole.boreAsPrinted,
      hole.printError,
    ),
    'boss-least': follows(hole.bossDiameter, 'Boss at least', lengthNumber(hole.bossDiameter.value)),
    bite: follows(hole.bite, 'Bite of the knurl', lengthNumber(hole.bite.value)),
    'melt-volume': follows(hole.meltVolume, 'Displaced plastic', significantText(hole.meltVolume.value, 2)),
    ...screwControls(joint, assessment),
    ...wallControls(assessment, host),
  };
}

/** Where no length fits the least one is drawn. */
function screwControls(joint: Joint, { screw, dimensions, hole }: JointAssessment): Controls {
  if (screw.kind === 'refused') {
    const { least } = screwLengthWays(joint, dimensions, hole.meltHeight);
    return { 'screw-length': follows(least, 'Least length of a screw', lengthNumber(least.value)) };
  }
  const { length } = screw;
  return { 'screw-length': follows(length, 'Screw length', lengthNumber(length.value).replace(/\.0$/, '')) };
}

function wallControls({ hole }: JointAssessment, host: Host): Controls {
  const boss: Controls = host.bossDiameter_mm === undefined ? {} : { 'boss-diameter': yours('bossDiameter') };
  return host.wall.kind === 'lines'
    ? {
        ...boss,
        'wall-count': yours('wallCount'),
        wall: follows(hole.wall, 'Wall round the bore', diameterNumber(hole.wall.value)),
      }
    : { ...boss, wall: yours('wallThickness') };
}
