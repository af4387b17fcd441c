import type { ExistingHole } from '../../core/holes/existing-hole.ts';
import type { InfillFamily, InsertAxis } from '../../core/host/host.ts';
import type { JointAssessment } from '../../core/joint/assessment.ts';
import type { Joint } from '../../core/joint/joint.ts';
import type { SeatKind } from '../../core/pull-out/limit.ts';
import type { HeadShape } from '../../core/screws/screw.ts';

/** All that the section shows, as plain numbers; lengths in mm. */
export interface SectionInput {
  readonly screw: {
    readonly designation: string;
    /** Standard and class, as the note says them. */
    readonly description: string;
    readonly state: 'chosen' | 'refused';
    readonly nominalDiameter: number;
    readonly minorDiameter: number;
    /** Under the head; over all for a countersunk head. The least length when no length fits. */
    readonly length: number;
    readonly head: {
      readonly shape: HeadShape;
      readonly diameter: number;
      readonly height: number;
      readonly socketAcrossFlats: number;
      readonly socketDepth: number;
    };
    readonly washer?: {
      readonly holeDiameter: number;
      readonly outsideDiameter: number;
      readonly thickness: number;
    };
  };
  readonly clamped: {
    readonly kind: 'metal' | 'printed';
    readonly name: string;
    readonly thickness: number;
    readonly clearanceHole: number;
    /** A metal tube through it, whose hole is the clearance hole. */
    readonly sleeve?: { readonly outsideDiameter: number; readonly name: string };
  };
  /** Free distance between clamped part and printed face. */
  readonly gap: number;
  readonly insert: {
    readonly side: 'near-side' | 'far-side';
    readonly sunk: number;
    readonly knurlDiameter: number;
    readonly pilotDiameter: number;
    readonly length: number;
    readonly knurledLength: number;
    /** A hot insert melts the plastic around itself. */
    readonly remelted: boolean;
  };
  readonly hole: {
    readonly borePrinted: number;
    readonly boreDrawn: number;
    /** How a hole that is there is known; absent: it is yet to be drawn. */
    readonly given?: ExistingHole['known'];
    readonly depth: number;
    readonly chamfer: number;
    readonly meltHeight: number;
    /** mm³ */
    readonly meltVolume: number;
    readonly bite: number;
    readonly bossLeast: number;
  };
  readonly host: {
    readonly name: string;
    readonly thickness: number;
    readonly floor: number;
    readonly topSkin: number;
    readonly axis: InsertAxis;
    readonly wallThickness: number;
    readonly wallCount: number;
    readonly wallMeasured: boolean;
    readonly lineWidth: number;
    readonly layerHeight: number;
    readonly infill: { readonly density: number; readonly family: InfillFamily; readonly pattern: string };
    /** Absent: the insert sits in a larger part. */
    readonly bossDiameter?: number;
  };
  readonly seat: SeatKind;
  /** Which loads act on the clamped part: along the screw, across it. */
  readonly loads: { readonly pull: boolean; readonly shear: boolean };
}

/** Reads what the section shows from a joint and what was found about it. */
export function sectionInput(joint: Joint, assessment: JointAssessment): SectionInput {
  const { clamped, host } = joint;
  const { dimensions, hole } = assessment;
  return {
    screw: sectionScrew(joint, assessment),
    clamped: {
      kind: clamped.material.kind,
      name: clamped.material.name,
      thickness: clamped.thickness,
      clearanceHole: clamped.clearanceHole,
      ...(clamped.sleeve
        ? { sleeve: { outsideDiameter: clamped.sleeve.outsideDiameter, name: clamped.sleeve.material.name } }
        : {}),
    },
    gap: joint.gap,
    insert: {
      side: joint.insertSide,
      sunk: joint.sunk,
      knurlDiameter: dimensions.knurlDiameter.estimate.value,
      pilotDiameter: dimensions.pilotDiameter.estimate.value,
      length: dimensions.length.estimate.value,
      knurledLength: dimensions.knurledLength.estimate.value,
      remelted: joint.setting === 'heat-set',
    },
    hole: {
      borePrinted: hole.boreAsPrinted.value,
      boreDrawn: hole.drawn.value,
      ...(hole.existing ? { given: hole.existing.known } : {}),
      depth: hole.depth.value,
      chamfer: hole.chamfer.value,
      meltHeight: hole.meltHeight.value,
      meltVolume: hole.meltVolume.value,
      bite: hole.bite.value,
      bossLeast: hole.bossDiameter.value,
    },
    host: {
      name: host.material.name,
      thickness: host.thickness,
      floor: hole.floor.value,
      topSkin: host.topSkin,
      axis: host.axis,
      wallThickness: hole.wall.value,
      wallCount: wallCount(joint, hole.wall.value),
      wallMeasured: host.wall.kind === 'measured',
      lineWidth: host.wall.lineWidth,
      layerHeight: host.layerHeight,
      infill: host.infill,
      ...(host.bossDiameter === undefined ? {} : { bossDiameter: host.bossDiameter }),
    },
    seat: assessment.seat.kind,
    loads: { pull: joint.loads.pull > 0, shear: joint.loads.shear > 0 },
  };
}

function sectionScrew({ screw }: Joint, { screw: choice }: JointAssessment): SectionInput['screw'] {
  const { thread, head, washer } = screw;
  return {
    designation: thread.designation,
    description: `${head.standard}, class ${screw.propertyClass.designation}`,
    state: choice.kind,
    nominalDiameter: thread.nominalDiameter,
    minorDiameter: thread.limits.externalMinorMin,
    length: choice.kind === 'chosen' ? choice.length.value : choice.leastLength,
    head: {
      shape: head.shape,
      diameter: head.diameter,
      height: head.height,
      socketAcrossFlats: head.socketAcrossFlats,
      socketDepth: head.socketDepth,
    },
    ...(washer === undefined ? {} : { washer }),
  };
}

function wallCount({ host }: Joint, thickness: number): number {
  return host.wall.kind === 'lines'
    ? host.wall.count
    : Math.max(1, Math.round(thickness / host.wall.lineWidth));
}
