import type { Insert } from '../core/inserts/insert.ts';
import type { TorqueWindow } from '../core/joint/assessment.ts';
import type { AnswerableJoint } from '../core/joint/stop.ts';
import { askedTorque, holdOf, holdsAtBest } from '../core/service/hold.ts';
import {
  governingMargin,
  loadFactorOf,
  type Margin,
  marginsOf,
  screwLoadOf,
} from '../core/service/margins.ts';
import { remediesFor } from '../core/service/remedies.ts';
import { sensitivities } from '../core/service/sensitivity.ts';
import type { ServiceState } from '../core/service/service-state.ts';
import { nameOfEnd, reasonForService, titleOfState } from '../wording/hold.ts';
import { nameOfMove, sentenceOfRemedy } from '../wording/levers.ts';
import { plainText } from '../wording/sentence.ts';
import { quantity, rangeOf, rounded, torqueInNewtonMetres } from './rounded.ts';

/** Whether a joint holds through its life, and what moves that; null where no torque at all is allowed. */
export function holdReportOf(joint: AnswerableJoint, insert: Insert, window: TorqueWindow) {
  const torque = askedTorque(window);
  if (torque === undefined) return null;
  const hold = holdOf(joint, insert, torque);
  const isDialled = window.kind === 'window';
  const { worst } = hold;
  return {
    verdict: isDialled ? hold.verdict : 'fails',
    dialled: isDialled,
    holdsAtBest: isDialled && holdsAtBest(joint, insert, hold),
    torque_Nm: torqueInNewtonMetres(torque.value),
    worst: { state: worst.id, by: worst.by, name: nameOfEnd(worst.by), margin: rounded(worst.margin) },
    sentence: plainText(
      reasonForService(hold, governingMargin(worst, joint.factors), {
        factor: joint.factors.limits,
        isDialled,
      }),
    ),
    states: hold.states.map((state) => stateOf(state, joint)),
    sensitivities: sensitivities(joint, insert, torque).map(({ lever, unit, step, margin, gain }) => ({
      lever,
      name: nameOfMove(lever, unit, step),
      step,
      unit,
      margin: rounded(margin),
      gain: rounded(gain),
    })),
    remedies: remediesFor(joint, insert).map((remedy) => ({
      lever: remedy.lever,
      sentence: plainText(sentenceOfRemedy(remedy)),
      move: remedy.move,
      unit: remedy.unit,
      margin: rounded(remedy.margin),
      dial_Nm: torqueInNewtonMetres(remedy.dial),
    })),
  };
}

function stateOf(state: ServiceState, { factors }: AnswerableJoint) {
  const [loadFactor, screwLoad] = [loadFactorOf(state), screwLoadOf(state)];
  return {
    state: state.id,
    name: titleOfState(state),
    duration_h: state.hours,
    temperature_degC: state.temperature,
    preloadLeft: rounded(state.preloadLeft.value),
    preloadLeftRange: rangeOf(state.preloadLeft),
    loadFactor: loadFactor ? rounded(loadFactor.value) : null,
    screwLoad_N: screwLoad ? rounded(screwLoad.value) : null,
    margin: rounded(state.margin),
    by: state.by,
    margins: marginsOf(state, factors).map(marginOf),
  };
}

const marginOf = ({ by, held, asked, margin, governs }: Margin) => ({
  by,
  name: nameOfEnd(by),
  ...quantity('held', held),
  ...quantity('asked', asked),
  margin: margin ? rounded(margin.value) : null,
  governs,
});
