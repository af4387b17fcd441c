// Gives the coupons' files to programs that are not this one: every STL to admesh, the 3MF to unzip, to xmllint with a
// schema for each of its parts, and to lib3mf. Run by .ci/run, which installs them; a missing program is a failure, never
// a pass. A damaged file must be found too.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { importTypescript } from './run-typescript.mjs';

/** @typedef {{ name: string, triangles: number, volume: number, onBed: number[], stl: Uint8Array }} CouponFile */
/** @typedef {{ coupons: CouponFile[], threeMf: Uint8Array, damagedThreeMf: Uint8Array }} CouponFiles */
/** @typedef {{ name: string, triangles: number, closedAndOriented: boolean }} FoundObject */
/**
 * @typedef {{ error: string } | { warnings: number, inMillimetres: boolean, buildItems: number,
 *   metadata: Record<string, string>, objects: FoundObject[] }} ThreeMfFinding
 */

const scripts = dirname(fileURLToPath(import.meta.url));
/** Bores are polygons: the volume is off by a share of the bores, and single precision adds a little. */
const VOLUME_TOLERANCE = 3e-4;
/** Single precision of an STL, mm. */
const SIZE_TOLERANCE = 1e-4;

/** What xmllint ends with where a well-formed document does not follow its schema; a schema that it cannot read is another. */
const INVALID = 3;
/** The parts of a 3MF with the schema of each, and what a schema must find: an edit of the part that damages it. */
const PARTS = [
  {
    part: '[Content_Types].xml',
    schema: 'content-types.xsd',
    damages: [
      { what: 'a kind of file without its type', from: / ContentType="[^"]*"/, to: '' },
      { what: 'a kind of file that is named twice', from: 'Extension="model"', to: 'Extension="rels"' },
    ],
  },
  {
    part: '_rels/.rels',
    schema: 'relationships.xsd',
    damages: [
      { what: 'a relationship that leads nowhere', from: / Target="[^"]*"/, to: '' },
      { what: 'an element of another name', from: /Relationship /, to: 'Relation ' },
    ],
  },
  {
    part: '3D/3dmodel.model',
    schema: 'three-mf-core.xsd',
    damages: [
      { what: 'a unit that there is not', from: 'unit="millimeter"', to: 'unit="millimetre"' },
      { what: 'a metadata without a name', from: /<metadata name="[^"]*"/, to: '<metadata' },
      { what: 'an object without its number', from: '<object id="1"', to: '<object' },
      { what: 'two objects of one number', from: '<object id="2"', to: '<object id="1"' },
      { what: 'an object of a kind that there is not', from: 'type="model"', to: 'type="part"' },
      { what: 'an object without a mesh', from: /<mesh>.*?<\/mesh>/s, to: '' },
      { what: 'an element that there is not', from: '<resources>', to: '<resources><layer/>' },
      { what: 'an attribute that there is not', from: '<vertex ', to: '<vertex w="1" ' },
      { what: 'a vertex without z', from: / z="[^"]*"/, to: '' },
      { what: 'a coordinate with a comma', from: / x="[^"]*"/, to: ' x="1,5"' },
      { what: 'a coordinate that is no number', from: / y="[^"]*"/, to: ' y="NaN"' },
      { what: 'a triangle without its third corner', from: / v3="[^"]*"/, to: '' },
      { what: 'a triangle with a corner below 0', from: / v1="[^"]*"/, to: ' v1="-1"' },
      { what: 'triangles before the vertices', from: '<vertices>', to: '<triangles/><vertices>' },
      { what: 'a transform of eleven numbers', from: 'transform="1 0', to: 'transform="1' },
      { what: 'an item whose object is not there', from: '<item objectid="1"', to: '<item objectid="9999"' },
      { what: 'a model without a bed', from: /<build>.*<\/build>/s, to: '' },
    ],
  },
];

let passed = 0;
/** @type {string[]} */
const faults = [];

/**
 * @param {boolean} holds
 * @param {string} what
 */
function expect(holds, what) {
  if (holds) passed += 1;
  else faults.push(what);
}

/**
 * @param {string} program
 * @param {string[]} words
 */
function output(program, ...words) {
  const { error, status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 1e9 });
  if (error) throw new Error(`${program} does not run: ${error.message}`);
  return { status, ok: status === 0, text: stdout, complaint: stderr.trim() };
}

/**
 * @param {string} file
 */
function admesh(file) {
  const { text } = output('admesh', file);
  /** @param {RegExp} pattern */
  const numbers = (pattern) => (pattern.exec(text) ?? []).slice(1).map(Number);
  const axis = (/** @type {string} */ name) =>
    numbers(new RegExp(`Min ${name} =\\s*(\\S+), Max ${name} =\\s*(\\S+)`));
  return {
    triangles: numbers(/Number of facets +: +(\d+) +(\d+)/),
    disconnected: numbers(/Total disconnected facets +: +(\d+) +(\d+)/),
    parts: numbers(/Number of parts +: +(\d+)/),
    volume: numbers(/Volume +: +(\S+)/),
    repairs: [
      'Degenerate facets',
      'Edges fixed',
      'Facets removed',
      'Facets added',
      'Facets reversed',
      'Backwards edges',
      'Normals fixed',
    ].flatMap((name) => numbers(new RegExp(`${name} +: +(\\d+)`))),
    box: ['X', 'Y', 'Z'].map(axis),
  };
}

/** @param {ReturnType<typeof admesh>} finding */
const isSound = ({ disconnected, repairs, parts }) =>
  disconnected.length === 2 &&
  repairs.length === 7 &&
  parts[0] === 1 &&
  [...disconnected, ...repairs].every((count) => count === 0);

/**
 * @param {string} folder
 * @param {CouponFile} coupon
 */
function checkStl(folder, { name, triangles, volume, onBed, stl }) {
  const file = join(folder, `${name}.stl`);
  writeFileSync(file, stl);
  const finding = admesh(file);
  expect(isSound(finding), `${name}: admesh finds it closed, outward, in one part`);
  expect(
    finding.triangles.join() === `${triangles},${triangles}`,
    `${name}: admesh counts ${triangles} triangles`,
  );
  const [found = 0] = finding.volume;
  expect(
    Math.abs(found / volume - 1) < VOLUME_TOLERANCE,
    `${name}: volume ${found} by admesh, ${volume} by formula`,
  );
  onBed.forEach((size, axis) => {
    const [least = Number.NaN, most = Number.NaN] = finding.box[axis] ?? [];
    const lies = Math.abs(least) < SIZE_TOLERANCE && Math.abs(most - size) < SIZE_TOLERANCE;
    expect(lies, `${name}: from 0 to ${size} along axis ${axis + 1}; admesh: ${least} to ${most}`);
  });
}

/**
 * An STL without its last triangle, and one with the first turned round.
 *
 * @param {string} folder
 * @param {CouponFile} coupon
 */
function checkDamagedStl(folder, { stl }) {
  const lacking = stl.slice(0, -50);
  new DataView(lacking.buffer).setUint32(80, (stl.length - 84) / 50 - 1, true);
  const turned = stl.slice();
  turned.set(stl.slice(108, 120), 120);
  turned.set(stl.slice(120, 132), 108);
  for (const [name, bytes] of Object.entries({ lacking, turned })) {
    const file = join(folder, `${name}.stl`);
    writeFileSync(file, bytes);
    expect(!isSound(admesh(file)), `a mesh with a triangle ${name} is found out by admesh`);
  }
}

/**
 * @param {string} file
 * @returns {ThreeMfFinding}
 */
function readByLibrary(file) {
  const { ok, text, complaint } = output('python3', join(scripts, 'check-three-mf.py'), file);
  if (!ok) throw new Error(`lib3mf does not run: ${complaint}`);
  return /** @type {ThreeMfFinding} */ (JSON.parse(text));
}

/**
 * A part of the 3MF must follow its schema, and a damaged one must not.
 *
 * @param {string} folder
 * @param {(typeof PARTS)[number]} part
 */
function checkPart(folder, { part, schema, damages }) {
  const path = join(folder, 'parts', part);
  const rules = join(scripts, 'schemas', schema);
  const validate = (/** @type {string} */ file) =>
    output('xmllint', '--noout', '--nonet', '--huge', '--schema', rules, file);
  const { ok, complaint } = validate(path);
  expect(ok, `xmllint finds ${part} as its schema asks: ${complaint.slice(0, 1000)}`);
  const whole = readFileSync(path, 'utf8');
  for (const { what, from, to } of damages) {
    const damaged = join(folder, 'damaged.xml');
    const text = whole.replace(from, to);
    writeFileSync(damaged, text);
    const isRefused = validate(damaged).status === INVALID;
    expect(text !== whole && isRefused, `${part}: ${what} is found out by the schema`);
  }
}

/**
 * @param {string} folder
 * @param {Uint8Array} bytes
 * @param {readonly CouponFile[]} coupons
 */
function checkThreeMf(folder, bytes, coupons) {
  const file = join(folder, 'coupons.3mf');
  writeFileSync(file, bytes);
  expect(output('unzip', '-tq', file).ok, 'unzip finds the 3MF whole');
  output('unzip', '-q', file, '-d', join(folder, 'parts'));
  for (const part of PARTS) checkPart(folder, part);
  const finding = readByLibrary(file);
  if ('error' in finding) {
    expect(false, `lib3mf reads the 3MF in strict mode: ${finding.error}`);
    return;
  }
  const { warnings, inMillimetres, buildItems, metadata, objects } = finding;
  expect(warnings === 0, `lib3mf has no warning: ${warnings}`);
  expect(inMillimetres, 'lib3mf finds millimetres');
  expect(buildItems === coupons.length, `lib3mf finds each object on the bed: ${buildItems}`);
  expect(
    metadata['Title'] === 'Coupons' && metadata['Application'] === 'Knurlwright',
    'lib3mf finds the metadata',
  );
  expect(
    objects.every(({ closedAndOriented }) => closedAndOriented),
    'lib3mf finds every object closed and oriented',
  );
  const listed = (/** @type {readonly { name: string, triangles: number }[]} */ list) =>
    list.map(({ name, triangles }) => `${name} ${triangles}`).join();
  expect(listed(objects) === listed(coupons), 'lib3mf finds every name with its triangles');
}

const folder = mkdtempSync(join(tmpdir(), 'knurlwright-meshes-'));
try {
  const { couponFiles } = /** @type {{ couponFiles: () => CouponFiles }} */ (
    await importTypescript('tests/support/coupon-files.ts')
  );
  const { coupons, threeMf, damagedThreeMf } = couponFiles();
  for (const coupon of coupons) checkStl(folder, coupon);
  const [first] = coupons;
  if (first) checkDamagedStl(folder, first);
  checkThreeMf(folder, threeMf, coupons);
  const damaged = join(folder, 'damaged.3mf');
  writeFileSync(damaged, damagedThreeMf);
  expect('error' in readByLibrary(damaged), 'a 3MF that asks for a vertex it has not is found out by lib3mf');
} catch (error) {
  faults.push(String(error));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const fault of faults) console.error(`FAILED ${fault}`);
console.log(`Coupons by other programs: ${passed} passed, ${faults.length} failed`);
process.exitCode = faults.length === 0 && passed > 0 ? 0 : 1;
