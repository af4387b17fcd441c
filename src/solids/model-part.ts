import { SaxesParser } from 'saxes';
import { ModelGatherer, type ModelPart } from './model-gatherer.ts';
import { NumberList } from './number-list.ts';
import { type InSteps, type Refused, refused } from './reading.ts';
import { type Scan, scanElements, TRIANGLE, VERTEX } from './scan-mesh.ts';

/** Bytes given to a reader at a time. */
const PIECE = 65_536;
/** Bytes of a list between two looks at the messages. */
const MOST_AT_ONCE = 4_000_000;

const LESS = 0x3c;
const GREATER = 0x3e;

/** Where the next start tag with one of these local names ends; where there is none, the end. */
function afterListTag(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(LESS, from); at >= 0; at = bytes.indexOf(LESS, at + 1)) {
    // A prefix, a colon and the name are short.
    const head = String.fromCharCode(...bytes.subarray(at + 1, at + 33));
    if (!/^(?:[^\s<>/]*:)?(?:vertices|triangles)[\s>]/.test(head)) continue;
    const close = bytes.indexOf(GREATER, at);
    if (close >= 0) return close + 1;
  }
  return bytes.length;
}

function strictParser(gatherer: ModelGatherer) {
  const parser = new SaxesParser({ xmlns: true });
  let depth = 0;
  parser.on('error', () => {
    gatherer.fault = true;
  });
  parser.on('opentag', (tag) => {
    depth += 1;
    gatherer.open(tag, depth);
  });
  parser.on('closetag', (tag) => {
    depth -= 1;
    gatherer.close(tag);
  });
  return parser;
}

/**
 * Reads one model of a 3MF file in steps. A strict reader takes all but the inside of the lists of vertices and triangles,
 * which `scanElements` reads; it goes on at their end tags.
 *
 * @param name - of the part, for a refusal
 */
export function* modelReading(bytes: Uint8Array, name: string): InSteps<ModelPart | Refused> {
  const gatherer = new ModelGatherer();
  const parser = strictParser(gatherer);
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const damaged = () => refused({ code: 'damaged-model', part: name, line: parser.line });

  function* skeleton(from: number, to: number): Generator<number, boolean, undefined> {
    for (let at = from; at < to; at += PIECE) {
      try {
        parser.write(decoder.decode(bytes.subarray(at, Math.min(to, at + PIECE)), { stream: true }));
      } catch {
        return false;
      }
      if (gatherer.fault) return false;
      yield at / bytes.length;
    }
    return true;
  }

  function* list(from: number, kind: 'vertices' | 'triangles'): InSteps<Scan> {
    const shape = kind === 'vertices' ? VERTEX : TRIANGLE;
    const into = gatherer.openObject?.[kind] ?? new NumberList();
    let scan: Scan = { kind: 'paused', at: from };
    while (scan.kind === 'paused') {
      scan = scanElements(bytes, { from: scan.at, most: MOST_AT_ONCE, shape }, into);
      yield scan.at / bytes.length;
    }
    return scan;
  }

  for (let at = 0; at < bytes.length; ) {
    const next = afterListTag(bytes, at);
    if (!(yield* skeleton(at, next))) return damaged();
    at = next;
    const { list: kind, missing } = gatherer;
    if (missing !== undefined) return refused({ code: 'needs-extension', extension: missing });
    if (kind === undefined) continue;
    gatherer.list = undefined;
    const scan = yield* list(at, kind);
    if (scan.kind === 'damaged') return damaged();
    at = scan.at;
  }
  try {
    parser.close();
  } catch {
    return damaged();
  }
  gatherer.end();
  return gatherer.fault ? damaged() : gatherer.part;
}
