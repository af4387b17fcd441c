import type { InfillPattern } from '../core/joint/catalogue.ts';

/**
 * Prismatic: walls upright along the build direction. Cellular: cells closed or bent in all directions.
 * Rectilinear alternates by layer and has unsupported crossings; it counts as prismatic, at the weak end.
 */
export const INFILL_PATTERNS: readonly InfillPattern[] = [
  { id: 'grid', name: 'Grid', family: 'prismatic', source: 'own-model' },
  { id: 'triangles', name: 'Triangles', family: 'prismatic', source: 'own-model' },
  { id: 'honeycomb', name: 'Honeycomb', family: 'prismatic', source: 'gibson-ashby' },
  { id: 'rectilinear', name: 'Rectilinear', family: 'prismatic', source: 'own-model' },
  { id: 'cubic', name: 'Cubic', family: 'cellular', source: 'own-model' },
  { id: 'gyroid', name: 'Gyroid', family: 'cellular', source: 'own-model' },
];
