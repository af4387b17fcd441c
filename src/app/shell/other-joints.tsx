import type { JointDocument } from '../../storage/document.ts';
import { DEMO_NAMES, loadDemo, loadNewJoint } from '../demos/demo-list.ts';
import { useSheet } from '../state/sheet-context.ts';
import { useSay } from './say.ts';

/** The demonstration joints, and one of one's own. */
export function OtherJoints() {
  const { document } = useSheet();
  const others = DEMO_NAMES.filter((name) => name !== document.name);
  return (
    <>
      Other joints:{' '}
      {others.map((name) => (
        <span key={name}>
          <OpenDemo label={name} load={() => loadDemo(name)} />,{' '}
        </span>
      ))}
      <OpenDemo label="a new one" load={loadNewJoint} />.
    </>
  );
}

function OpenDemo({ label, load }: { readonly label: string; readonly load: () => Promise<JointDocument> }) {
  const { open } = useSheet();
  const say = useSay();
  const press = () => load().then(open, () => say({ text: `${label} could not be loaded.`, isFault: true }));
  return (
    <button type="button" className="go" onClick={() => void press()}>
      {label}
    </button>
  );
}
