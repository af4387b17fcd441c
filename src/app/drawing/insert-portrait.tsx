import type { ReactNode } from 'react';

/** The insert alone; lengths in mm. */
export interface InsertShape {
  readonly nominalDiameter: number;
  readonly minorDiameter: number;
  readonly knurlDiameter: number;
  readonly pilotDiameter: number;
  readonly length: number;
  readonly knurledLength: number;
}

export type PortraitDimensionId = 'knurl-diameter' | 'pilot-diameter' | 'length' | 'knurled-length';

export interface InsertPortraitProps {
  readonly insert: InsertShape;
  readonly controls?: Partial<Record<PortraitDimensionId, ReactNode>>;
  /** Stands below the knurled length, for its provenance. */
  readonly knurledLengthRemark?: ReactNode;
}

/** The insert as measured, half in section. */
export function InsertPortrait({ insert }: InsertPortraitProps) {
  return <svg role="img" aria-label={`Insert, knurl ${insert.knurlDiameter} mm`} />;
}
