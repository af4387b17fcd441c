/** What each key of a joint document is called where a person reads about it. */
const KEY_WORDS: Readonly<Record<string, string>> = {
  format: 'format',
  version: 'version',
  name: 'name',
  scenario: 'description',
  joint: 'joint',
  caliper: 'caliper',
  permissibleError_mm: 'permissible error',
  chosenInsert: 'chosen insert',
  date: 'date',
  evidence: 'use of the tests',
  note: 'note',
  photo: 'photo',
  batch: 'what was varied',
  settingTime_s: 'setting time',
  ironTemperature_degC: 'iron temperature',
  bore_mm: 'bore',
  result: 'result',
  greatest: 'greatest reading',
  resolution: 'resolution',
  leverRatio: 'lever ratio',
  unit: 'unit',
  value: 'reading',
  infill_percent: 'infill',
  wallLines: 'wall lines',
  printer: 'printer',
  printers: 'printers',
  nozzle_mm: 'nozzle',
  gaugeCompensation: 'way the gauge was printed',
  jawFlat_mm: 'flats of the jaws',
  gaugeStep_mm: 'step of pins or drills',
  firstLayerFlare_mm: 'flare of the first layer',
  flaredLayers: 'layers that flare',
  drawn_mm: 'drawn',
  measured_mm: 'measured',
  instrument: 'instrument',
  facets: 'corners of the polygon',
  insert: 'insert',
  tests: 'tests',
  clamped: 'clamped part',
  material: 'material',
  thickness_mm: 'thickness',
  clearanceHole_mm: 'clearance hole',
  gap_mm: 'gap',
  sunk_mm: 'depth below the face',
  insertSide: 'side of the insert',
  seat: 'seat',
  host: 'printed part',
  axis: 'insert axis',
  wall: 'wall',
  kind: 'kind',
  count: 'count',
  lineWidth_mm: 'line width',
  convention: 'way of counting walls',
  layerHeight_mm: 'layer height',
  infill: 'infill',
  pattern: 'pattern',
  density_percent: 'density',
  sleeve: 'spacer',
  outsideDiameter_mm: 'outside diameter',
  columns: 'screws along x',
  rows: 'screws along y',
  spacingX_mm: 'spacing along x',
  spacingY_mm: 'spacing along y',
  diameter_mm: 'diameter of the circle',
  positions_mm: 'positions',
  topSkin_mm: 'top skin',
  bossDiameter_mm: 'boss diameter',
  setting: 'way of setting',
  holes: 'holes',
  compensation: 'compensation',
  fit_mm: 'fit over the pilot',
  step_mm: 'step of the drawn hole',
  existing: 'hole that is there',
  known: 'way it is known',
  depth_mm: 'depth',
  screw: 'screw',
  thread: 'thread',
  head: 'head',
  propertyClass: 'property class',
  friction: 'friction',
  washer: 'washer',
  length_mm: 'length',
  loads: 'loads',
  pull_N: 'pull',
  shear_N: 'load across the screw',
  shearAcross_N: 'load across the screw along y',
  at_mm: 'place of the loads',
  moment_Nm: 'moment about',
  pivot: 'pivot',
  x_mm: 'edge along x',
  y_mm: 'edge along y',
  x: 'x',
  y: 'y',
  z: 'z',
  retightenings: 're-tightenings',
  vibration: 'vibration',
  threadLocking: 'thread locking',
  serviceTemperature_degC: 'warmest service',
  duration_h: 'time under load',
  use: 'use',
  tool: 'tool',
  settings_Nm: 'settings',
  step_Nm: 'step of the tool',
  factors: 'factors',
  limits: 'limits divided by',
  closed: 'kept closed by',
  id: 'identifier',
  label: 'label',
  knurlDiameter_mm: 'knurl diameter',
  pilotDiameter_mm: 'pilot diameter',
  knurledLength_mm: 'knurled length',
};

/** What one item of a list is; by default a reading. */
const LIST_ITEMS: Readonly<Record<string, string>> = {
  settings_Nm: 'setting',
  positions_mm: 'screw',
  tests: 'test',
  printers: 'printer',
  holes: 'hole',
};

const UNIT_ENDINGS = {
  _mm: 'mm',
  _N: 'N',
  _Nm: 'N·m',
  _degC: '°C',
  _h: 'h',
  _s: 's',
  _percent: '%',
} as const;

/** The unit that a key's name, or that of the group it is in, ends in; empty for a key without one. */
export function unitOfPath(path: string): string {
  const endings = Object.entries(UNIT_ENDINGS);
  const units = path.split('.').flatMap((key) => endings.find(([suffix]) => key.endsWith(suffix))?.[1] ?? []);
  return units.at(-1) ?? '';
}

/** A path of a document in words: drawer.2.length_mm.0 is "insert 3 of the drawer, length, reading 1". */
export function placeOfPath(path: string): string {
  if (path === '') return 'the document';
  const words: string[] = [];
  const parts = path.split('.');
  for (const [index, part] of parts.entries()) {
    const before = parts[index - 1];
    if (part === 'drawer' || part === 'tests') {
      if (index === parts.length - 1) words.push(part === 'drawer' ? 'the drawer' : 'the tests');
    } else if (!Number.isNaN(Number(part)) && part !== '') {
      if (before === 'drawer') words.push(`insert ${Number(part) + 1} of the drawer`);
      else words.push(`${LIST_ITEMS[before ?? ''] ?? 'reading'} ${Number(part) + 1}`);
    } else if (part === 'pattern' && before === 'joint') {
      words.push('pattern of screws');
    } else if (part !== 'joint' || parts.length === 1) {
      words.push(Object.hasOwn(KEY_WORDS, part) ? (KEY_WORDS[part] ?? part) : `“${part}”`);
    }
  }
  return words.join(', ');
}
