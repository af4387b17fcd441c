import type { JointDocument } from '../../storage/document.ts';
import { DEMOS } from '../demos/demos.ts';
import { NEW_JOINT } from '../demos/new-joint.ts';
import { useSheet } from '../state/sheet-context.ts';

/** The demonstration joints, and one of one's own. */
export function OtherJoints() {
  const { document } = useSheet();
  const others = DEMOS.filter(({ name }) => name !== document.name);
  return (
    <>
      Other joints:{' '}
      {others.map((demo) => (
        <span key={demo.name}>
          <OpenJoint joint={demo} label={demo.name} />,{' '}
        </span>
      ))}
      <OpenJoint joint={NEW_JOINT} label="a new one" />.
    </>
  );
}

function OpenJoint({ joint, label }: { readonly joint: JointDocument; readonly label: string }) {
  const { open } = useSheet();
  return (
    <button type="button" className="go" onClick={() => open(joint)}>
      {label}
    </button>
  );
}
