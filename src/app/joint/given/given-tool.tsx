import { memo } from 'react';
import { LIMITS } from '../../../storage/limits.ts';
import { ReadingsField } from '../../fields/readings-field.tsx';
import { DRIVER_SETTING, QUANTITIES } from '../../state/quantities.ts';
import { definitionOf, fromDocument, toDocument } from '../../state/quantity-of-key.ts';
import { useSheetValue } from '../../state/sheet-context.ts';
import { TOOLS } from '../choices.ts';
import { DocumentChoice } from '../document-choice.tsx';
import { DocumentQuantity } from '../document-quantity.tsx';
import { useDocumentField } from '../use-document-field.ts';
import { GivenGroup } from './given-group.tsx';

const PLACE = 'given';
const UNIT = DRIVER_SETTING.unit;

/** What the screw is tightened with. */
export const GivenTool = memo(function GivenTool() {
  const settings = useSheetValue(({ journal }) => journal.present.joint.tool.settings_Nm);
  return (
    <GivenGroup name="Tightened with">
      <DocumentChoice path="joint.tool.kind" place={PLACE} label="Tool" choices={TOOLS} />
      <DriverSettings settings={settings} />
      {settings.length > 0 ? null : <DocumentQuantity quantity={QUANTITIES.toolStep} place={PLACE} />}
    </GivenGroup>
  );
});

function DriverSettings({ settings }: { readonly settings: readonly number[] }) {
  const field = useDocumentField('joint.tool.settings_Nm', PLACE);
  return (
    <ReadingsField
      key={field.renewal}
      label="Its settings"
      noun="A setting"
      note="Empty: a scale without steps of its own."
      definition={definitionOf(DRIVER_SETTING)}
      readings={settings.map((setting) => fromDocument(setting, UNIT))}
      onTake={(taken) => field.take(taken.map((setting) => toDocument(setting, UNIT)))}
      least={LIMITS.settings.least}
      most={LIMITS.settings.greatest}
      problem={field.problem}
      onRefused={field.onRefused}
    />
  );
}
