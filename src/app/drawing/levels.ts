import type { SectionInput } from './section-input.ts';

export interface Span {
  readonly top: number;
  readonly bottom: number;
}

/** Every level of the section, mm below the printed face. */
export interface Levels {
  readonly head: Span;
  readonly washer?: Span;
  readonly clamped: Span;
  readonly gap: Span;
  /** The insert as it stands on the sheet; upside down when set from the far side. */
  readonly insert: Span;
  readonly well: Span;
  /** The wide hole that takes the insert. */
  readonly hole: Span;
  /** Floor under the hole; from the far side, the shoulder above it. */
  readonly floor: Span;
  readonly host: Span;
  /** Shank below the head. */
  readonly shank: Span;
}

/** Stacks the parts from the printed face upwards and downwards. */
export function sectionLevels(input: SectionInput): Levels {
  const { screw, clamped, gap } = input;
  const clampedSpan = { top: -gap - clamped.thickness, bottom: -gap };
  const isCountersunk = screw.head.shape === 'countersunk';
  const washer =
    screw.washer && !isCountersunk
      ? { top: clampedSpan.top - screw.washer.thickness, bottom: clampedSpan.top }
      : undefined;
  const bearing = washer?.top ?? clampedSpan.top;
  const headTop = isCountersunk ? clampedSpan.top : bearing - screw.head.height;
  const headBottom = headTop + screw.head.height;
  const measuredFrom = isCountersunk ? headTop : headBottom;
  return {
    head: { top: headTop, bottom: headBottom },
    ...(washer ? { washer } : {}),
    clamped: clampedSpan,
    gap: { top: -gap, bottom: 0 },
    ...hostLevels(input),
    shank: { top: headBottom, bottom: Math.max(measuredFrom + screw.length, headBottom) },
  };
}

function hostLevels({
  insert,
  hole,
  host,
}: SectionInput): Pick<Levels, 'insert' | 'well' | 'hole' | 'floor' | 'host'> {
  const thickness = host.thickness;
  const inner = insert.sunk + insert.length;
  const depth = Math.min(thickness, Math.max(hole.depth, inner));
  const hostSpan = { top: 0, bottom: thickness };
  if (insert.side === 'near-side') {
    return {
      insert: { top: insert.sunk, bottom: inner },
      well: { top: Math.min(inner, depth), bottom: depth },
      hole: { top: 0, bottom: depth },
      floor: { top: depth, bottom: thickness },
      host: hostSpan,
    };
  }
  const shoulder = thickness - depth;
  return {
    insert: { top: thickness - inner, bottom: thickness - insert.sunk },
    well: { top: shoulder, bottom: Math.max(shoulder, thickness - inner) },
    hole: { top: shoulder, bottom: thickness },
    floor: { top: 0, bottom: shoulder },
    host: hostSpan,
  };
}
