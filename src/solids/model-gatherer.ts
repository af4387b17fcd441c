import type { SaxesTagNS } from 'saxes';
import { NumberList } from './number-list.ts';

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
/** Extensions that a file may require and that change no shape, or are read here. */
const KNOWN_EXTENSIONS: ReadonlySet<string> = new Set([
  CORE,
  PRODUCTION,
  'http://schemas.microsoft.com/3dmanufacturing/material/2015/02',
  'http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07',
]);

/** An object placed in another or on the bed. */
export interface Placed {
  readonly object: string;
  /** Name of the part of the file that the object stands in, where it is another one. */
  readonly part: string | undefined;
  /** Twelve numbers, as text: three rows of the turn and one of the shift. */
  readonly transform: string | undefined;
}

export interface ModelObject {
  /** A part to print, not a support. */
  readonly isModel: boolean;
  readonly vertices: NumberList;
  readonly triangles: NumberList;
  readonly components: Placed[];
}

/** One model of a 3MF file. */
export interface ModelPart {
  readonly kind: 'model';
  unit: string;
  readonly objects: Map<string, ModelObject>;
  readonly items: Placed[];
}

const attributeOf = (tag: SaxesTagNS, name: string): string | undefined => tag.attributes[name]?.value;

function placed(tag: SaxesTagNS): Placed {
  const path = Object.values(tag.attributes).find(({ uri, local }) => uri === PRODUCTION && local === 'path');
  return {
    object: attributeOf(tag, 'objectid') ?? '',
    part: path?.value,
    transform: attributeOf(tag, 'transform'),
  };
}

/** Gathers what the elements of a model outside the lists say. */
export class ModelGatherer {
  readonly part: ModelPart = { kind: 'model', unit: 'millimeter', objects: new Map(), items: [] };
  /** The list that has just been opened: its elements follow. */
  list: 'vertices' | 'triangles' | undefined;
  missing: string | undefined;
  fault = false;
  private object: ModelObject | undefined;
  private isModel = false;

  get openObject(): ModelObject | undefined {
    return this.object;
  }

  open(tag: SaxesTagNS, depth: number): void {
    if (depth === 1) this.isModel = tag.uri === CORE && tag.local === 'model';
    if (tag.uri !== CORE || !this.isModel) return;
    switch (tag.local) {
      case 'model':
        this.model(tag);
        break;
      case 'object':
        this.object = {
          isModel: (attributeOf(tag, 'type') ?? 'model') === 'model',
          vertices: new NumberList(),
          triangles: new NumberList(),
          components: [],
        };
        this.part.objects.set(attributeOf(tag, 'id') ?? '', this.object);
        break;
      case 'vertices':
      case 'triangles':
        if (!tag.isSelfClosing && this.object !== undefined) this.list = tag.local;
        break;
      case 'component':
        this.object?.components.push(placed(tag));
        break;
      case 'item':
        this.part.items.push(placed(tag));
        break;
    }
  }

  close(tag: SaxesTagNS): void {
    if (tag.uri === CORE && tag.local === 'object') this.object = undefined;
  }

  end(): void {
    if (!this.isModel) this.fault = true;
  }

  private model(tag: SaxesTagNS): void {
    this.part.unit = attributeOf(tag, 'unit') ?? 'millimeter';
    for (const prefix of (attributeOf(tag, 'requiredextensions') ?? '').split(/\s+/).filter(Boolean)) {
      const uri = attributeOf(tag, `xmlns:${prefix}`) ?? prefix;
      if (!KNOWN_EXTENSIONS.has(uri)) this.missing ??= uri;
    }
  }
}
