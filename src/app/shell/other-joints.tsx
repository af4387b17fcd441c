import type { JointDocument } from '../../storage/document.ts';
import { DEMO_NAMES, loadDemo, loadNewJoint } from '../demos/demo-list.ts';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { useSay } from './say.ts';

interface OtherJointsProps {
  /** The button that was pressed goes with the joint that it opened. */
  readonly onOpened: () => void;
}

/** The demonstration joints, and one of one's own. */
export function OtherJoints({ onOpened }: OtherJointsProps) {
  const present = useSheetValue(({ journal }) => journal.present.name);
  const others = DEMO_NAMES.filter((name) => name !== present);
  return (
    <>
      Other joints:{' '}
      {others.map((name) => (
        <span key={name}>
          <OpenDemo label={name} load={() => loadDemo(name)} onOpened={onOpened} />,{' '}
        </span>
      ))}
      <OpenDemo label="a new one" load={loadNewJoint} onOpened={onOpened} />.
    </>
  );
}

interface OpenDemoProps extends OtherJointsProps {
  readonly label: string;
  readonly load: () => Promise<JointDocument>;
}

function OpenDemo({ label, load, onOpened }: OpenDemoProps) {
  const { open } = useSheetActions();
  const say = useSay();
  const show = (document: JointDocument) => {
    open(document);
    onOpened();
  };
  const press = () => load().then(show, () => say({ text: `${label} could not be loaded.`, isFault: true }));
  return (
    <button type="button" className="go" onClick={() => void press()}>
      {label}
    </button>
  );
}
