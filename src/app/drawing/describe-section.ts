import type { DimensionId } from './dimension-ids.ts';
import { plainNumber } from './plain-value.ts';
import type { SectionInput } from './section-input.ts';

/** The section in words, for whoever cannot see it. */
export function describeSection(input: SectionInput): string {
  const { screw, clamped, gap, insert, host } = input;
  const number = (id: DimensionId) => plainNumber(input, id);
  const length =
    screw.state === 'refused'
      ? `for which no length fits, drawn ${number('screw-length')} mm long`
      : `${number('screw-length')} mm long`;
  const from = insert.side === 'near-side' ? '' : ', set from the far side';
  const sunk = insert.sunk > 0 ? `, ${number('sunk')} mm below the face` : '';
  return [
    `Section through the joint: an ${screw.designation} screw with a ${screw.head.shape} head, ${length},`,
    `goes through ${number('clamped-thickness')} mm of ${clamped.name} with a clearance hole of`,
    `${number('clearance-hole')} mm${sleeveWords(input)}${gap > 0 ? ` and over a gap of ${number('gap')} mm` : ''} into a brass insert of`,
    `knurl diameter ${number('knurl-diameter')} and length ${number('insert-length')} mm in ${host.name}${from}${sunk}.`,
    `${seatSentence(input)} The hole is ${input.hole.given === 'as-measured' ? 'measured' : 'drawn'} ${number('bore-drawn')} mm wide and ${number('hole-depth')} mm deep,`,
    `prints ${number('bore-printed')} mm, and ${floorWords(input, number('floor'))}; ${wallWords(input, number)}.`,
    ...loadSentences(input),
  ].join(' ');
}

/** The capital of a name, but not of an abbreviation. */
const INITIAL = /^[A-Z](?=[a-z])/;

const sleeveWords = ({ clamped: { sleeve } }: SectionInput): string =>
  sleeve
    ? ` in a spacer of ${sleeve.outsideDiameter} mm of ${sleeve.name.replace(INITIAL, (letter) => letter.toLowerCase())}`
    : '';

function loadSentences({ loads }: SectionInput): readonly string[] {
  if (loads.pull && loads.shear)
    return ['A pull along the screw and a load across it act on the clamped part.'];
  if (loads.pull) return ['A pull along the screw acts on the clamped part.'];
  return loads.shear ? ['A load across the screw acts on the clamped part.'] : [];
}

function seatSentence({ seat }: SectionInput): string {
  switch (seat) {
    case 'on-insert':
      return 'The clamped part bears on the insert, so the clamp force stays in metal.';
    case 'on-plastic':
      return 'The clamped part bears on the plastic, so the clamp force pulls at the insert.';
    case 'over-gap':
      return 'The clamped part does not reach the insert, so the clamp force pulls at it through the plastic.';
    case 'far-side':
      return 'The clamp force draws the insert into the part from behind.';
  }
}

function floorWords({ host, insert }: SectionInput, floor: string): string {
  if (host.floor <= 0) return 'leaves no floor';
  return insert.side === 'near-side' ? `leaves a floor of ${floor} mm` : `leaves a shoulder of ${floor} mm`;
}

function wallWords({ host }: SectionInput, number: (id: DimensionId) => string): string {
  const wall = host.wallMeasured
    ? `a measured wall of ${number('wall')} mm`
    : `${number('wall-count')} ${host.wallCount === 1 ? 'wall' : 'walls'} of ${number('line-width')} mm`;
  const boss = host.bossDiameter === undefined ? '' : ` in a boss of ${number('boss-diameter')} mm`;
  const verb = host.wallMeasured || host.wallCount === 1 ? 'surrounds' : 'surround';
  return `${wall} ${verb} it${boss}, with ${number('infill')} % ${host.infill.pattern} infill beyond`;
}
