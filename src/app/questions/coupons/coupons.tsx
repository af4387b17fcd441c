import { useId, useMemo, useState } from 'react';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Coupon } from '../../../solids/coupon-mesh.ts';
import { diameterNumber } from '../../../wording/amount.ts';
import {
  COUPON_NAMES,
  COUPON_PURPOSES,
  type CouponKind,
  sentenceOfCouponNotice,
  sentenceOfCouponRefusal,
} from '../../../wording/coupons.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { QuantityField } from '../../fields/quantity-field.tsx';
import { documentFileName, saveFile } from '../../state/document-file.ts';
import { useSheetValue } from '../../state/sheet-context.ts';
import { QuestionSection } from '../question-section.tsx';
import { factsOf } from './coupon-facts.ts';
import { couponFile, meshOf } from './coupon-files.ts';
import { type CouponWish, couponOf } from './coupon-of.ts';
import { CouponSheet } from './coupon-sheet.tsx';
import styles from './coupons.module.css';
import { Turntable } from './turntable.tsx';

const KINDS = (Object.keys(COUPON_NAMES) as CouponKind[]).map((value) => ({
  value,
  label: COUPON_NAMES[value],
}));
const AXES = [
  { value: 'along-build', label: 'upright bores' },
  { value: 'across-build', label: 'lying bores' },
] as const;

const LENGTH = { kind: 'length', displayUnit: 'mm' } as const;
const COUNT = { kind: 'ratio', displayUnit: '-', min: 1, max: 40, step: 1 } as const;

export interface CouponsProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

/** Coupons to print for this joint and its insert: seen, saved, and with a sheet to write on. */
export default function Coupons({ joint, assessment }: CouponsProps) {
  const [wish, setWish] = useState<CouponWish>({
    kind: 'hole-gauge',
    axis: joint.host.axis,
    count: 5,
    step: 0.1,
    number: 1,
    bed: { x: 200, y: 200, z: 200 },
  });
  const change = (changes: Partial<CouponWish>) => setWish((before) => ({ ...before, ...changes }));
  const coupon = useMemo(() => couponOf(joint, assessment, wish), [joint, assessment, wish]);
  return (
    <QuestionSection
      id="coupons"
      question="Coupons to print"
      aside="Pieces with the joint’s own hole and walls. Print them as you print the part, lying as they come; what they measure is then true of the part."
    >
      <div className={styles.fields}>
        <ChoiceField label="Coupon" value={wish.kind} choices={KINDS} onTake={(kind) => change({ kind })} />
        <ChoiceField
          label="Printed with"
          value={wish.axis}
          choices={AXES}
          onTake={(axis) => change({ axis })}
        />
        {wish.kind === 'hole-gauge' ? (
          <>
            <QuantityField
              label="Bores"
              definition={COUNT}
              value={wish.count}
              unitShown=""
              onTake={(count) => change({ count: Math.round(count) })}
            />
            <QuantityField
              label="From one to the next"
              definition={{ ...LENGTH, min: 0.02, max: 1, step: 0.05 }}
              value={wish.step}
              onTake={(step) => change({ step })}
            />
          </>
        ) : (
          <QuantityField
            label="Number on it"
            definition={{ ...COUNT, max: 99 }}
            value={wish.number}
            unitShown=""
            onTake={(number) => change({ number: Math.round(number) })}
          />
        )}
        {(['x', 'y', 'z'] as const).map((side) => (
          <QuantityField
            key={side}
            label={`Bed, ${side}`}
            definition={{ ...LENGTH, min: 30, max: 2_000, step: 10 }}
            value={wish.bed[side]}
            onTake={(length) => change({ bed: { ...wish.bed, [side]: length } })}
          />
        ))}
      </div>
      <p>{COUPON_PURPOSES[wish.kind]}</p>
      {coupon.kind === 'refused' ? (
        <DerivationRow slot="coupon refused">
          <p role="alert">
            <b>Not made.</b> <Told sentence={sentenceOfCouponRefusal(coupon.refusal)} />
          </p>
          <DerivationSlot name="coupon refused" />
        </DerivationRow>
      ) : (
        <Made coupon={coupon} joint={joint} />
      )}
    </QuestionSection>
  );
}

function Made({ coupon, joint }: { readonly coupon: Coupon; readonly joint: Joint }) {
  const jointName = useSheetValue(({ journal }) => journal.present.name);
  const [isSheet, setSheet] = useState(false);
  const mesh = useMemo(() => meshOf(coupon), [coupon]);
  const name = COUPON_NAMES[coupon.kind];
  const save = (format: 'stl' | '3mf') => {
    const stem = documentFileName(`${jointName} ${coupon.kind}`).replace(/\.joint\.json$/, '');
    saveFile(couponFile(mesh, format, { name, title: `${name}, ${jointName}` }), `${stem}.${format}`);
  };
  return (
    <div className={styles.made}>
      <Turntable mesh={mesh} name={name} />
      <div>
        <Facts coupon={coupon} />
        {coupon.kind === 'hole-gauge' ? <Numbers coupon={coupon} /> : null}
        {'notices' in coupon
          ? coupon.notices.map((notice) => <p key={notice}>{sentenceOfCouponNotice(notice)}</p>)
          : null}
        <p className={styles.presses}>
          <button type="button" className="press" onClick={() => save('3mf')}>
            Save as 3MF
          </button>
          <button type="button" className="press" onClick={() => save('stl')}>
            Save as STL
          </button>
          <button type="button" className="go" onClick={() => setSheet(true)}>
            The sheet to write on
          </button>
        </p>
      </div>
      {isSheet ? (
        <CouponSheet coupon={coupon} joint={joint} jointName={jointName} onClose={() => setSheet(false)} />
      ) : null}
    </div>
  );
}

const Facts = ({ coupon }: { readonly coupon: Coupon }) => (
  <dl className={styles.facts}>
    {factsOf(coupon).map(({ name, sentence }) => (
      <DerivationRow key={name} slot={`coupon ${name}`}>
        <div>
          <dt>{name}</dt>
          <dd>
            <Told sentence={sentence} />
          </dd>
          <dd className={styles.opened}>
            <DerivationSlot name={`coupon ${name}`} />
          </dd>
        </div>
      </DerivationRow>
    ))}
  </dl>
);

/** Which drawn diameter each number of a gauge stands for. */
export function Numbers({ coupon }: { readonly coupon: Extract<Coupon, { kind: 'hole-gauge' }> }) {
  const id = useId();
  const { bores, diameters } = coupon;
  return (
    <table className={styles.numbers} aria-labelledby={id}>
      <caption id={id}>Number on the gauge, and the diameter drawn there</caption>
      <tbody>
        <tr>
          <th scope="row">number</th>
          {bores.map(({ number }) => (
            <td key={number}>{number}</td>
          ))}
        </tr>
        <DerivationRow slot="bores of the gauge">
          <tr>
            <th scope="row">⌀ mm</th>
            {diameters.map((drawn, place) => {
              const text = diameterNumber(drawn.value);
              const number = String(place + 1);
              return (
                <td key={number}>
                  <ComputedValue derived={drawn} text={text} label={`Bore ${number}, ⌀ ${text} mm`} />
                </td>
              );
            })}
          </tr>
          <DerivationSlot name="bores of the gauge" columns={1 + bores.length} />
        </DerivationRow>
      </tbody>
    </table>
  );
}
