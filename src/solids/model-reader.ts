import { SaxesParser } from 'saxes';
import { ModelGatherer, type ModelPart } from './model-gatherer.ts';
import type { NumberList } from './number-list.ts';
import { type Refused, refused } from './reading.ts';
import { type ElementShape, scanElements, TRIANGLE, VERTEX } from './scan-mesh.ts';

/** What is not all there yet may grow to this, bytes: no element and no start tag is longer. */
const LONGEST_TAG = 1_000_000;
/** A prefix, a colon and the name of a list are shorter. */
const LONGEST_NAME = 32;
const LIST_TAG = /^(?:[^\s<>/]*:)?(?:vertices|triangles)[\s>]/;

const LESS = 0x3c;
const GREATER = 0x3e;

/** How far the strict reader may go: to the end of the next start tag of a list, or to a tag that may become one. */
function strictEnd(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(LESS, from); at >= 0; at = bytes.indexOf(LESS, at + 1)) {
    const head = String.fromCharCode(...bytes.subarray(at + 1, at + 1 + LONGEST_NAME));
    const close = LIST_TAG.test(head) ? bytes.indexOf(GREATER, at) : undefined;
    if (close !== undefined) return close < 0 ? at : close + 1;
    if (head.length < LONGEST_NAME) return at;
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

/** Bytes that have come and are not read yet, at the front of a room that is used again and again. */
class Unread {
  private room = new Uint8Array(4 * 65_536);
  private filled = 0;

  get bytes(): Uint8Array {
    return this.room.subarray(0, this.filled);
  }

  add(more: Uint8Array): void {
    if (this.filled + more.length > this.room.length) {
      const larger = new Uint8Array(2 * (this.filled + more.length));
      larger.set(this.bytes);
      this.room = larger;
    }
    this.room.set(more, this.filled);
    this.filled += more.length;
  }

  drop(read: number): void {
    this.room.copyWithin(0, read, this.filled);
    this.filled -= read;
  }
}

/**
 * Reads one model of a 3MF file while it is unpacked. A strict reader takes all but the inside of the lists of vertices
 * and triangles, which `scanElements` reads; it goes on at their end tags.
 */
export class ModelReader {
  private readonly gatherer = new ModelGatherer();
  private readonly parser = strictParser(this.gatherer);
  private readonly decoder = new TextDecoder('utf-8', { fatal: true });
  private readonly unread = new Unread();
  private list: { readonly shape: ElementShape; readonly into: NumberList } | undefined;
  private hadList = false;
  private readonly name: string;

  /** @param name - of the part, for a refusal */
  constructor(name: string) {
    this.name = name;
  }

  /** Takes the next bytes; a refusal where they cannot be read. */
  take(piece: Uint8Array): Refused | undefined {
    this.unread.add(piece);
    const { bytes } = this.unread;
    const read = this.readFrom(bytes);
    const { missing } = this.gatherer;
    if (missing !== undefined) return refused({ code: 'needs-extension', extension: missing });
    if (this.gatherer.fault || bytes.length - read > LONGEST_TAG) return this.damaged();
    this.unread.drop(read);
    return undefined;
  }

  /** The model, after the last bytes. */
  end(): ModelPart | Refused {
    const { gatherer, parser } = this;
    this.readStrictly(this.unread.bytes);
    try {
      parser.close();
    } catch {
      gatherer.fault = true;
    }
    gatherer.end();
    return gatherer.fault || this.list !== undefined ? this.damaged() : gatherer.part;
  }

  /** Reads as far as everything is there; how far. */
  private readFrom(bytes: Uint8Array): number {
    let at = 0;
    while (!this.gatherer.fault) {
      if (this.list !== undefined) {
        const scan = scanElements(bytes, at, this.list.shape, this.list.into);
        at = scan.at;
        if (scan.kind === 'stopped') break;
        this.list = undefined;
      }
      const end = strictEnd(bytes, at);
      if (end === at) break;
      this.readStrictly(bytes.subarray(at, end));
      at = end;
    }
    return at;
  }

  private readStrictly(bytes: Uint8Array): void {
    const { gatherer, parser, decoder } = this;
    try {
      parser.write(decoder.decode(bytes, { stream: true }));
    } catch {
      gatherer.fault = true;
    }
    const object = gatherer.openObject;
    if (gatherer.list !== undefined && object !== undefined) {
      this.list = { shape: gatherer.list === 'vertices' ? VERTEX : TRIANGLE, into: object[gatherer.list] };
      this.hadList = true;
    }
    gatherer.list = undefined;
  }

  private damaged(): Refused {
    // The strict reader does not see the lines of a list.
    const line = this.hadList ? {} : { line: this.parser.line };
    return refused({ code: 'damaged-model', part: this.name, ...line });
  }
}
