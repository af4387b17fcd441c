import type { HoleReadingRecord, JointDocument, PrinterRecord } from '../../../storage/document.ts';
import type { Edit } from '../../state/edit.ts';
import type { NamedQuantity } from '../../state/quantities.ts';
import type { KeyQuantity } from '../../state/quantity-of-key.ts';

/** What a gauge is read with until a person says otherwise: usual jaws, a set of drills by tenths. */
export const BEGIN_GAUGE = { jawFlat_mm: 0.3, gaugeStep_mm: 0.1 } as const;
const BEGIN_NOZZLE = 0.4;

const NUMBERED = /^printer-(\d+)$/;

/** A printer more, for the joint's own material and layers; the joint names it. */
export function addedPrinter({ printers, joint }: JointDocument): readonly Edit[] {
  const numbers = printers.map(({ id }) => Number(NUMBERED.exec(id)?.[1] ?? 0));
  const number = Math.max(printers.length, ...numbers) + 1;
  const { material, layerHeight_mm } = joint.host;
  const printer: PrinterRecord = {
    id: `printer-${number}`,
    name: `Printer ${number}`,
    material,
    nozzle_mm: BEGIN_NOZZLE,
    layerHeight_mm,
    gaugeCompensation: 'none',
    ...BEGIN_GAUGE,
    holes: [],
  };
  return [
    { path: 'printers', value: [...printers, printer] },
    { path: 'joint.printer', value: printer.id },
  ];
}

/** The document without one printer; a joint that names it is one of an unknown printer again. */
export const withoutPrinter = ({ printers, joint }: JointDocument, id: string): readonly Edit[] => [
  { path: 'printers', value: printers.filter((printer) => printer.id !== id) },
  ...(joint.printer === id ? [{ path: 'joint.printer', value: undefined }] : []),
];

export const holesPath = (printer: number): string => `printers.${printer}.holes`;

/** A hole has no name but its place. */
export const holePath = (printer: number, hole: number): string => `${holesPath(printer)}.${hole}`;

export const withHoles = (
  { printers }: JointDocument,
  printer: number,
  added: readonly HoleReadingRecord[],
): Edit => ({ path: holesPath(printer), value: [...(printers[printer]?.holes ?? []), ...added] });

export const withoutHole = ({ printers }: JointDocument, printer: number, hole: number): Edit => ({
  path: holesPath(printer),
  value: (printers[printer]?.holes ?? []).filter((_, at) => at !== hole),
});

/** How a diameter of a hole is asked for. */
export const HOLE: KeyQuantity = {
  limit: 'holeDiameter_mm',
  unit: 'mm',
  step: 0.01,
  usual: [1, 15],
  isDiameter: true,
};

export const CORNERS: KeyQuantity & { readonly note: string } = {
  limit: 'facets',
  unit: '-',
  step: 1,
  note: 'Empty: exported as a true circle.',
};

/** The numbers of a printer, in the order of its fields. */
export function printerQuantities(
  printer: number,
): readonly (NamedQuantity & { readonly isOptional?: true })[] {
  const at = (key: string) => `printers.${printer}.${key}`;
  return [
    {
      path: at('nozzle_mm'),
      label: 'Nozzle',
      limit: 'nozzle_mm',
      unit: 'mm',
      step: 0.1,
      usual: [0.2, 1],
      isDiameter: true,
    },
    {
      path: at('layerHeight_mm'),
      label: 'Layer height of the gauge',
      limit: 'layerHeight_mm',
      unit: 'mm',
      step: 0.01,
      usual: [0.08, 0.4],
    },
    {
      path: at('jawFlat_mm'),
      label: 'Flats of the inside jaws',
      limit: 'jawFlat_mm',
      unit: 'mm',
      step: 0.05,
      note: 'Width of both flats across the hole, with the offset of the blades. They make small holes read small.',
    },
    {
      path: at('gaugeStep_mm'),
      label: 'Pins or drills in steps of',
      limit: 'gaugeStep_mm',
      unit: 'mm',
      step: 0.01,
    },
  ];
}

/** How the first layers spread at the bed. */
export function flareQuantities(printer: number): readonly NamedQuantity[] {
  const at = (key: string) => `printers.${printer}.${key}`;
  return [
    {
      path: at('firstLayerFlare_mm'),
      label: 'First layer spreads, a side',
      limit: 'firstLayerFlare_mm',
      unit: 'mm',
      step: 0.05,
      note: 'Empty: nobody has looked, 0.2 mm is assumed. 0 where the slicer takes it back.',
    },
    {
      path: at('flaredLayers'),
      label: 'and dies out over layers',
      limit: 'flaredLayers',
      unit: '-',
      step: 1,
      note: 'Empty: one.',
    },
  ];
}
