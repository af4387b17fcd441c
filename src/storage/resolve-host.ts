import type { Host, Wall } from '../core/host/host.ts';
import type { Catalogue } from '../core/joint/catalogue.ts';
import { toCore } from '../core/units/convert.ts';
import type { JointDocument } from './document.ts';
import type { Faults } from './resolve.ts';

type GivenJoint = JointDocument['joint'];

const wallOf = (wall: GivenJoint['host']['wall']): Wall =>
  wall.kind === 'lines'
    ? { kind: 'lines', count: wall.count, lineWidth: wall.lineWidth_mm, convention: wall.convention }
    : { kind: 'measured', thickness: wall.thickness_mm, lineWidth: wall.lineWidth_mm };

/** The printed part of a document with its material and infill rows; faults are reported at their keys. */
export function resolveHost(given: GivenJoint, catalogue: Catalogue, faults: Faults): Host | undefined {
  const { host } = given;
  const material = catalogue.hostMaterials.find((row) => row.id === host.material);
  const pattern = catalogue.infillPatterns.find((row) => row.id === host.infill.pattern);
  if (!material) {
    const choices = catalogue.hostMaterials.map((row) => row.id).join(', ');
    faults.add('joint.host.material', 'unknown-row', { value: host.material, choices });
  }
  if (!pattern) {
    const choices = catalogue.infillPatterns.map((row) => row.id).join(', ');
    faults.add('joint.host.infill.pattern', 'unknown-row', { value: host.infill.pattern, choices });
  }
  if (host.layerHeight_mm > host.wall.lineWidth_mm) {
    faults.add('joint.host.layerHeight_mm', 'layer-above-line', {
      layerHeight: host.layerHeight_mm,
      lineWidth: host.wall.lineWidth_mm,
    });
  }
  if (!material || !pattern) return undefined;
  return {
    material,
    axis: host.axis,
    wall: wallOf(host.wall),
    layerHeight: host.layerHeight_mm,
    infill: {
      pattern: pattern.id,
      family: pattern.family,
      density: toCore(host.infill.density_percent, '%'),
    },
    topSkin: host.topSkin_mm,
    thickness: host.thickness_mm,
    ...(host.bossDiameter_mm === undefined ? {} : { bossDiameter: host.bossDiameter_mm }),
  };
}
