import { infillShearShare } from '../host/infill-stiffness.ts';
import { type End, moduliOf } from '../host/little-known.ts';
import type { PrintedMaterial } from '../host/material.ts';
import { ringDiameter } from '../pull-out/ring-diameter.ts';
import type { Situation } from '../pull-out/situation.ts';
import { plugDiameter } from '../pull-out/wall-plug.ts';
import { frustumStiffness } from '../screws/stiffness.ts';
import {
  carefulEntry,
  type Derived,
  type Entry,
  entry,
  entryAs,
  entryFrom,
  withWays,
} from '../sources/derived.ts';
import { rimHeldCompliance } from './bonded-ring.ts';
import {
  endHeld,
  pressedReachOf,
  pulledReachOf,
  type RingEntries,
  rimHeld,
  ringOf,
  shearEntry,
} from './bonded-ring-steps.ts';
import { columnBelow } from './boss-column-steps.ts';
import { WIDER_THAN_HOLE } from './host-compliance.ts';

const OWN = { unit: 'mm/N', source: 'own-model', standing: 'estimate' } as const;

/**
 * Compliance of the plastic that holds an insert, with its steps; see hostComplianceOf, which is the same number.
 *
 * @param situation - seat, knurl, walls, boss, bore [mm], modulus and Poisson's ratio of the host
 * @param end - where the modulus is taken within what is known of it
 * @returns C_h [mm/N]; beside the insert 0 where no plastic stands round the knurl
 * @source own-model which form holds where, docs/finite-element.md
 */
export function hostCompliance(situation: Situation, end: End = 'middle'): Derived {
  switch (situation.seat) {
    case 'on-insert':
      return { symbol: 'C_h', value: 0, formula: '0, the part bears on the insert', entries: [], ...OWN };
    case 'far-side':
      return shoulderCompliance(situation, end);
    case 'on-plastic':
      return held('C_h', pressedRing(situation, end));
    case 'over-gap': {
      const { bossDiameter } = situation.host;
      if (bossDiameter === undefined) return stifferWay(situation, end);
      return standingCompliance('C_h', situation, {
        end,
        boss: entry('D_b', bossDiameter, 'mm'),
        ring: ringDiameter(situation),
      });
    }
  }
}

/** A ring held at its end, under the symbol of what it stands for. */
const held = (symbol: string, ring: RingEntries): Derived => {
  const one = endHeld(ring);
  return { ...OWN, symbol, value: one.value, formula: 'C_r', entries: [entryFrom(one)] };
};

const ringWith = (situation: Situation, end: End, outer: Derived): RingEntries => ({
  knurlDiameter: entryFrom(situation.insert.knurlDiameter.estimate),
  outerDiameter: entryFrom(outer),
  length: entryFrom(situation.insert.knurledLength.estimate),
  ...elasticOf(situation.material, end),
});

const elasticOf = ({ modulusInPlane, poissonRatio }: PrintedMaterial, end: End) => ({
  modulus: carefulEntry('E', moduliOf(modulusInPlane, end), 'MPa'),
  poissonRatio: entry('ν', poissonRatio.value, '-'),
});

/** The ring that plastic round a knurl makes, no wider than the force reaches. */
function reached(
  situation: Situation,
  end: End,
  limit: Derived,
  reachOf: typeof pressedReachOf,
): RingEntries {
  const ring = ringWith(situation, end, limit);
  const reach = reachOf(ring);
  const outer: Derived = {
    symbol: 'D_ring',
    value: Math.min(limit.value, reach.value),
    unit: 'mm',
    formula: `min(${limit.symbol}, D_reach)`,
    entries: [entryFrom(limit), entryFrom(reach)],
    source: 'own-model',
    standing: 'estimate',
  };
  return { ...ring, outerDiameter: entryFrom(outer) };
}

const pressedRing = (situation: Situation, end: End): RingEntries =>
  reached(situation, end, ringDiameter(situation), pressedReachOf);

interface Standing {
  readonly end: End;
  /** What stands on the base: a boss, or walls as if they stood free. */
  readonly boss: Entry;
  /** What is bonded round the knurl. */
  readonly ring: Derived;
}

/** An insert in a boss that stands on its base: its ring, and the column below. */
function standingCompliance(symbol: string, situation: Situation, { end, boss, ring }: Standing): Derived {
  const round = endHeld(reached(situation, end, ring, pulledReachOf));
  const { depth, insert, bore, floor, material } = situation;
  const length = insert.length.estimate;
  const room: Derived = {
    symbol: 'l_room',
    value: Math.max(0, depth.value - length.value),
    unit: 'mm',
    formula: 'max(0, T − L)',
    entries: [entryFrom(depth), entryFrom(length)],
    source: 'own-model',
    standing: 'estimate',
  };
  const column = columnBelow({
    outerDiameter: entryAs('D_b', boss),
    boreDiameter: entryAs('D_t', entryFrom(bore)),
    room: entryFrom(room),
    solid: entryAs('l_solid', entryFrom(floor)),
    ...elasticOf(material, end),
  });
  const entries = [entryFrom(round), entryFrom(column)];
  return { ...OWN, symbol, value: round.value + column.value, formula: 'C_r + C_c', entries };
}

/** An insert in a large part: by its infill, or by its walls alone. */
function stifferWay(situation: Situation, end: End): Derived {
  const plug = plugDiameter(situation);
  const infill = rimThroughInfill(situation, end, plug);
  const walls = standingCompliance('C_s', situation, {
    end,
    boss: entryFrom(plug),
    ring: plug,
  });
  const value = Math.min(infill.value, walls.value);
  const entries = [entryFrom(infill), entryFrom(walls)];
  return { ...OWN, symbol: 'C_h', value, formula: 'min(C_i, C_s)', entries };
}

/**
 * An insert in a large part, sheared against a rim far away through walls and then infill.
 *
 *     C = [ln(Dw/Dk) + ln(Dr/Dw)/ψ]/(2π · G · Lk)        Dr = pulledReach; solid up to Dr where the walls reach it
 *
 * Infinite for walls in a hollow.
 */
function rimThroughInfill(situation: Situation, end: End, plug: Derived): Derived {
  const walls = ringWith(situation, end, plug);
  const reach = pulledReachOf(walls);
  if (plug.value >= reach.value) {
    const solid = rimHeld({ ...walls, outerDiameter: entryFrom(reach) });
    return { ...OWN, symbol: 'C_i', value: solid.value, formula: 'C_r', entries: [entryFrom(solid)] };
  }
  const share = infillShearShare(situation.host.infill);
  const beyond = { ...walls, knurlDiameter: entryFrom(plug), outerDiameter: entryFrom(reach) };
  const value = rimHeldCompliance(ringOf(walls)) + rimHeldCompliance(ringOf(beyond)) / share.value;
  const formula = '(ln(D_w/D_k) + ln(D_reach/D_w)/ψ_i)/(2π · G · L_k)';
  const diameters = [entryFrom(plug), walls.knurlDiameter, entryFrom(reach)];
  const entries = [...diameters, entryFrom(share), shearEntry(walls), walls.length];
  return { ...OWN, symbol: 'C_i', value, formula, entries };
}

/** Shoulder in front of a far-side insert, squeezed between insert and face. */
function shoulderCompliance(situation: Situation, end: End): Derived {
  const { holeDiameter } = situation.bearingFace;
  const { floor, insert } = situation;
  if (floor.value <= 0) {
    return {
      ...OWN,
      symbol: 'C_h',
      value: 0,
      formula: '0, no shoulder is left',
      entries: [entryFrom(floor)],
    };
  }
  const { modulus } = elasticOf(situation.material, end);
  const face = widerThanHole(insert.knurlDiameter.estimate, holeDiameter);
  const cone = frustumStiffness({
    thickness: floor.value,
    faceDiameter: face.value,
    holeDiameter,
    modulus: modulus.value,
  });
  const ways = { t: floor, D: face, ...(modulus.from ? { E: modulus.from } : {}) };
  const entries = [entryFrom(withWays(cone, ways))];
  return { ...OWN, symbol: 'C_h', value: 1 / cone.value, formula: '1/k', entries };
}

/** The face that a cone begins at: never as narrow as its hole. */
export const widerThanHole = (face: Derived, holeDiameter: number): Derived => ({
  symbol: 'D',
  value: Math.max(face.value, WIDER_THAN_HOLE * holeDiameter),
  unit: 'mm',
  formula: `max(${face.symbol}, ${WIDER_THAN_HOLE} · d)`,
  entries: [entryFrom(face), entry('d', holeDiameter, 'mm')],
  source: 'own-model',
  standing: 'estimate',
});
