import type { Stop } from '../core/joint/assessment.ts';
import { temperatureText } from './amount.ts';

export interface StopWords {
  readonly title: string;
  readonly because: string;
  readonly instead: string;
}

type EndangeringUse = Extract<Stop, { readonly code: 'use-endangers-people' }>['use'];

type SofteningStop = Extract<Stop, { readonly code: 'too-near-softening' }>;

const WITHHELD = 'No hole, insert or torque is given for it, and this stop cannot be switched off.';
const ENGINEER = 'follow the local code, and have a licensed engineer sign for it.';

const USES = {
  overhead: {
    title: 'This joint would hold a load over people.',
    because: `A printed part with an insert must not be the only thing that holds a load overhead. ${WITHHELD}`,
    instead: `Use an independent retention that carries the whole load, ${ENGINEER}`,
  },
  lifting: {
    title: 'This joint would lift a load.',
    because: `Lifting gear is rated, tested and marked; a printed part with an insert cannot be. ${WITHHELD}`,
    instead: `Use rated lifting points bolted through metal, ${ENGINEER}`,
  },
  vehicle: {
    title: 'People’s safety on the road would hang on this joint.',
    because: `Brakes, steering, seats and what is fixed outside a vehicle shake, heat and age beyond what is known of printed joints. ${WITHHELD}`,
    instead: `Use a metal bracket and a through-bolt with an independent retention, ${ENGINEER}`,
  },
  climbing: {
    title: 'This joint would stop a person’s fall.',
    because: `A fall loads a joint suddenly, and a printed part gives no warning before it breaks. ${WITHHELD}`,
    instead: `Use certified equipment and anchors, ${ENGINEER}`,
  },
  pressure: {
    title: 'This joint would hold pressure.',
    because: `A vessel under pressure lets go at once and throws its parts; printed layers also leak and creep. ${WITHHELD}`,
    instead: `Use a certified vessel with metal fasteners and a relief valve, ${ENGINEER}`,
  },
  mains: {
    title: 'This joint would guard mains voltage.',
    because: `A cover or a protective earth that comes loose can kill, and plastic creeps under its screw. ${WITHHELD}`,
    instead: `Use a tested enclosure and fix the protective earth metal on metal, ${ENGINEER}`,
  },
} as const satisfies Record<EndangeringUse, StopWords>;

/** Why no answer is given at all, and what to do instead. */
export function sentencesOfStop(stop: Stop): StopWords {
  switch (stop.code) {
    case 'use-endangers-people':
      return USES[stop.use];
    case 'host-does-not-melt':
      return {
        title: `${stop.material} does not melt.`,
        because:
          'A photopolymer chars under the iron instead of flowing into the knurl, so a heat-set insert finds no hold in it.',
        instead:
          'Use a captive nut in a pocket, a self-threading insert or a bonded one, or print the part in a thermoplastic.',
      };
    case 'too-near-softening':
      return {
        title: `${stop.material} is too near softening at ${temperatureText(stop.serviceTemperature)}.`,
        because: `${softeningSentence(stop)} Within 10 °C of that no strength is left to count on, so this joint may run at ${temperatureText(stop.greatest)} at most.`,
        instead:
          'Take a plastic that softens later, keep the joint cooler, or use a through-bolt with washers on both sides.',
      };
  }
}

/** Where the plastic softens; both ends where little is known of it, and whether they disagree. */
function softeningSentence({ softening, serviceTemperature, atBest }: SofteningStop): string {
  if (atBest === undefined) return `It softens at ${temperatureText(softening)}.`;
  const between = `Little is known of where it softens: between ${temperatureText(softening)} and ${temperatureText(atBest.softening)}. The careful end decides`;
  return serviceTemperature > atBest.greatest
    ? `${between}; the other end would say no too.`
    : `${between}; at the other end this joint would be answered.`;
}
