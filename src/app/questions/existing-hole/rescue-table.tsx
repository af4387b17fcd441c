import type { Insert } from '../../../core/inserts/insert.ts';
import type { Rescue } from '../../../core/recommend/rescue.ts';
import { forceText, lengthText } from '../../../wording/amount.ts';
import { nameOfRescue, sentenceOfRescue } from '../../../wording/existing-hole.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { insertName } from '../../joint/drawer/insert-name.ts';
import styles from './existing-hole.module.css';

const COLUMNS = 4;

export interface RescueTableProps {
  readonly rescues: readonly Rescue[];
  readonly drawer: readonly Insert[];
  readonly onChoose: (insertId: string) => void;
  readonly onDrill: (drilled: { readonly diameter: number; readonly wallLeft: number }) => void;
  readonly onDeepen: (depth: number) => void;
  readonly onReprint: () => void;
}

/** Ways out, ranked; what can be taken up on this page can be pressed. */
export function RescueTable(props: RescueTableProps) {
  return (
    <table className={styles['rescues']}>
      <caption>What helps, the least work first among what is enough</caption>
      <thead>
        <tr>
          <th scope="col">Way out</th>
          <th scope="col">holds</th>
          <th scope="col">how, or why not</th>
          <th scope="col">
            <span className="out-of-sight">Take it up</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {props.rescues.map((rescue) => (
          <RescueRow key={rescue.code} {...props} rescue={rescue} />
        ))}
      </tbody>
    </table>
  );
}

function RescueRow({ rescue, ...props }: RescueTableProps & { readonly rescue: Rescue }) {
  const slot = `rescue-${rescue.code}`;
  const isOut = rescue.kind === 'impossible';
  const insert =
    rescue.kind === 'possible' && rescue.code === 'another-insert'
      ? props.drawer.find(({ id }) => id === rescue.insertId)
      : undefined;
  const name = nameOfRescue(rescue.code);
  return (
    <DerivationRow slot={slot}>
      <tr className={`${styles['way']} ${isOut ? styles['out'] : ''}`.trim()}>
        <th scope="row">
          {isOut ? <s>{name}</s> : name}
          {insert ? <span className={styles['which']}>{insertName(insert)}</span> : null}
        </th>
        <td className={styles['force']}>
          <Holds rescue={rescue} />
        </td>
        <td className={styles['remark']}>
          <Told sentence={sentenceOfRescue(rescue)} of={name} />
          {rescue.kind === 'possible' && rescue.code === 'self-tapping-insert' ? (
            <span className="line">
              {' '}
              {STANDINGS['common-practice'].sign} {STANDINGS['common-practice'].words}
            </span>
          ) : null}
        </td>
        <td className={styles['action']}>
          <Action rescue={rescue} {...props} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

function Holds({ rescue }: { readonly rescue: Rescue }) {
  if (rescue.kind === 'impossible') return 'out';
  if (rescue.code === 'self-tapping-insert') return 'not known';
  const text = forceText(rescue.holds.value);
  return (
    <>
      <ComputedValue
        derived={rescue.holds}
        text={text}
        label={`${nameOfRescue(rescue.code)} holds ${text}`}
      />
      {rescue.isEnough ? null : <span className={styles['less']}>less than asked</span>}
    </>
  );
}

function Action({
  rescue,
  onChoose,
  onDrill,
  onDeepen,
  onReprint,
}: RescueTableProps & { readonly rescue: Rescue }) {
  if (rescue.kind === 'impossible') return null;
  switch (rescue.code) {
    case 'another-insert':
      return <Press onPress={() => onChoose(rescue.insertId)}>choose it</Press>;
    case 'open-up': {
      const drilled = { diameter: rescue.drill.value, wallLeft: rescue.wallLeft.value };
      return <Press onPress={() => onDrill(drilled)}>take ⌀ {lengthText(rescue.drill.value)}</Press>;
    }
    case 'drill-deeper':
      return (
        <Press onPress={() => onDeepen(rescue.depth.value)}>take {lengthText(rescue.depth.value)}</Press>
      );
    case 'reprint':
      return <Press onPress={onReprint}>draw it anew</Press>;
    case 'nut-behind':
    case 'self-tapping-insert':
      return null;
  }
}

function Press({ onPress, children }: { readonly onPress: () => void; readonly children: React.ReactNode }) {
  return (
    <button type="button" className="press" onClick={onPress}>
      {children}
    </button>
  );
}
