import { type Generator, nextBits, uniformVariate } from './generator.ts';

/** Layers of equal area under the bell curve. */
const LAYERS = 256;

/** Where the lowest layer's rectangle ends and its tail begins, so that 256 equal layers just reach the top. */
const TAIL_BEGINS = 3.654152885361009;

/** Area of each layer under exp(−x²/2). */
const LAYER_AREA = 0.004928673233974655;

/** Bell curve without its factor. */
const bell = (x: number): number => Math.exp((-x * x) / 2);

/** Right edges of the layers from the lowest up; the lowest counts as a rectangle of its whole area. */
const EDGES = edgesOfLayers();
const HEIGHTS = EDGES.map(bell);
/** Width of one of the 2²³ steps of a layer on each side. */
const STEPS = EDGES.map((edge) => edge * 2 ** -23);

function edgesOfLayers(): Float64Array {
  const edges = new Float64Array(LAYERS + 1);
  edges[0] = LAYER_AREA / bell(TAIL_BEGINS);
  let edge = TAIL_BEGINS;
  for (let layer = 1; layer < LAYERS; layer += 1) {
    edges[layer] = edge;
    edge = Math.sqrt(-2 * Math.log(Math.min(1, LAYER_AREA / edge + bell(edge))));
  }
  // The top layer ends at the axis.
  edges[LAYERS] = 0;
  return edges;
}

/**
 * A number from the standard normal distribution.
 *
 * Ziggurat of G. Marsaglia and W. W. Tsang, Journal of Statistical Software 5 (2000) no. 8 (from memory), with separate
 * bits for layer and place as J. A. Doornik asks for (2005, from memory). Places come in 2²⁴ steps a layer.
 *
 * @param generator - moves on by one step, in 1 of 80 draws by more
 * @returns z [-]
 */
export function normalVariate(generator: Generator): number {
  const bits = nextBits(generator);
  const layer = bits & (LAYERS - 1);
  const x = ((bits >> 8) + 0.5) * (STEPS[layer] ?? 0);
  return Math.abs(x) < (EDGES[layer + 1] ?? 0) ? x : edgeVariate(generator, layer, x);
}

/** The rare rest of normalVariate, kept apart so that the usual case stays short. */
function edgeVariate(generator: Generator, layer: number, x: number): number {
  if (layer === 0) return x < 0 ? -tailVariate(generator) : tailVariate(generator);
  const foot = HEIGHTS[layer] ?? 0;
  const head = HEIGHTS[layer + 1] ?? 0;
  const isUnderBell = foot + uniformVariate(generator) * (head - foot) < bell(x);
  return isUnderBell ? x : normalVariate(generator);
}

/**
 * Fills an array with numbers from the standard normal distribution: what single draws give, but quicker.
 * The words of the state stay in local variables; the step is that of nextBits, and a test holds the two together.
 */
export function fillNormal(generator: Generator, into: Float64Array): void {
  const { state } = generator;
  let s0 = state[0] ?? 0;
  let s1 = state[1] ?? 0;
  let s2 = state[2] ?? 0;
  let s3 = state[3] ?? 0;
  for (let place = 0; place < into.length; place += 1) {
    const five = Math.imul(s1, 5);
    const bits = Math.imul((five << 7) | (five >>> 25), 9);
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    const layer = bits & (LAYERS - 1);
    const x = ((bits >> 8) + 0.5) * (STEPS[layer] ?? 0);
    if (Math.abs(x) < (EDGES[layer + 1] ?? 0)) {
      into[place] = x;
      continue;
    }
    state[0] = s0;
    state[1] = s1;
    state[2] = s2;
    state[3] = s3;
    into[place] = edgeVariate(generator, layer, x);
    s0 = state[0];
    s1 = state[1];
    s2 = state[2];
    s3 = state[3];
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
}

/** A number from the tail beyond the lowest rectangle, by rejection from an exponential. */
function tailVariate(generator: Generator): number {
  for (;;) {
    const beyond = -Math.log(uniformVariate(generator)) / TAIL_BEGINS;
    if (-2 * Math.log(uniformVariate(generator)) > beyond * beyond) return TAIL_BEGINS + beyond;
  }
}
