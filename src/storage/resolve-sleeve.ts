import type { Catalogue } from '../core/joint/catalogue.ts';
import type { Joint, Sleeve } from '../core/joint/joint.ts';
import type { JointDocument } from './document.ts';
import type { Faults } from './resolve.ts';

/** Material of the spacer that is proposed where a printed part yields. */
const SLEEVE_MATERIAL = 'steel';

const metalOf = (catalogue: Catalogue, id: string): Sleeve['material'] | undefined => {
  const row = catalogue.clampedMaterials.find((candidate) => candidate.id === id);
  return row?.kind === 'metal' ? row : undefined;
};

/** The metal spacer of a document with its material's row; faults are reported at their keys. */
export function resolveSleeve(
  { clamped, screw }: JointDocument['joint'],
  catalogue: Catalogue,
  faults: Faults,
): Sleeve | undefined {
  if (clamped.sleeve === undefined) return undefined;
  const head = catalogue.heads.find((row) => row.standard === screw.head);
  if (head?.shape === 'countersunk') {
    faults.add('joint.clamped.sleeve', 'sleeve-under-countersunk', { head: screw.head });
  }
  const material = metalOf(catalogue, clamped.sleeve.material);
  const outsideDiameter = clamped.sleeve.outsideDiameter_mm;
  if (!material) {
    const metals = catalogue.clampedMaterials.filter((row) => row.kind === 'metal');
    faults.add('joint.clamped.sleeve.material', 'unknown-row', {
      value: clamped.sleeve.material,
      choices: metals.map((row) => row.id).join(', '),
    });
    return undefined;
  }
  if (outsideDiameter <= clamped.clearanceHole_mm) {
    faults.add('joint.clamped.sleeve.outsideDiameter_mm', 'sleeve-not-wider', {
      value: outsideDiameter,
      hole: clamped.clearanceHole_mm,
    });
  }
  return { outsideDiameter, material };
}

/** The spacer material to try where a joint fails. */
export function sleeveAlternative(catalogue: Catalogue): Joint['alternatives'] {
  const sleeveMaterial = metalOf(catalogue, SLEEVE_MATERIAL);
  return sleeveMaterial ? { sleeveMaterial } : {};
}
