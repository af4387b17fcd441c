import { QUANTITIES } from '../../state/quantities.ts';
import { useFindingsValue, useSheetValue } from '../../state/sheet-context.ts';
import { AXES, CONVENTIONS, HOST_MATERIALS, INFILL_PATTERNS, WALL_KINDS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { wallOfKind } from '../wall-of-kind.ts';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';

/** The printed part round the insert. */
export function GivenHost() {
  const wall = useSheetValue(({ journal }) => journal.present.joint.host.wall);
  const thickness = useFindingsValue(({ shown }) => shown?.assessment.hole.wall.value);
  return (
    <GivenGroup name="Printed part">
      <DocumentChoice path="joint.host.material" place={PLACE} label="Printed in" choices={HOST_MATERIALS} />
      <DocumentChoice path="joint.host.axis" place={PLACE} label="Insert axis" choices={AXES} />
      <DocumentChoice
        path="joint.host.wall"
        place={PLACE}
        label="Wall round the hole"
        choices={WALL_KINDS}
        read={(value) => (isWall(value) ? value.kind : undefined)}
        write={(kind) => wallOfKind(wall, kind, thickness)}
      />
      {wall.kind === 'lines' ? (
        <>
          <DocumentQuantity quantity={QUANTITIES.wallCount} place={PLACE} />
          <DocumentQuantity quantity={QUANTITIES.lineWidth} place={PLACE} />
          <DocumentChoice
            path="joint.host.wall.convention"
            place={PLACE}
            label="Lines are counted as"
            choices={CONVENTIONS}
            note="Slicers differ: some lay rounded beads that overlap, some count each line at its full width."
          />
        </>
      ) : (
        <>
          <DocumentQuantity quantity={QUANTITIES.wallThickness} place={PLACE} />
          <DocumentQuantity quantity={QUANTITIES.lineWidth} place={PLACE} />
        </>
      )}
      <DocumentQuantity quantity={QUANTITIES.layerHeight} place={PLACE} />
      <DocumentChoice
        path="joint.host.infill.pattern"
        place={PLACE}
        label="Infill pattern"
        choices={INFILL_PATTERNS}
      />
      <DocumentQuantity quantity={QUANTITIES.infill} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.topSkin} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.hostThickness} place={PLACE} />
      <DocumentQuantity quantity={QUANTITIES.bossDiameter} place={PLACE} optional width={4} />
    </GivenGroup>
  );
}

const isWall = (value: unknown): value is { readonly kind: 'lines' | 'measured' } =>
  typeof value === 'object' && value !== null && 'kind' in value;
