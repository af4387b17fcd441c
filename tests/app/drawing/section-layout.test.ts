import { describe, expect, test } from 'vitest';
import { leadersCross } from '../../../src/app/drawing/note-layout.ts';
import type { Box } from '../../../src/app/drawing/points.ts';
import { type SectionLayout, sectionLayout } from '../../../src/app/drawing/section-layout.ts';
import type { Variant } from '../../../src/app/drawing/view.ts';
import { sectionGrid } from './odd-sections.ts';
import { section } from './section-inputs.ts';

const wide = { variant: 'wide', withSkinNote: false } as const;
const variants: readonly Variant[] = ['wide', 'narrow'];
const cases = sectionGrid().flatMap(([name, input]) =>
  variants.map(
    (variant) => [`${name}, ${variant}`, sectionLayout(input, { variant, withSkinNote: true })] as const,
  ),
);

type NamedBox = Box & { readonly name: string };

/** Everything that is written round the drawing, as boxes; px. */
function writtenBoxes({ labels, notes }: SectionLayout): readonly NamedBox[] {
  return [
    ...labels.map(({ id, middle, width, height }) => ({
      name: id,
      left: middle.x - width / 2,
      right: middle.x + width / 2,
      top: middle.y - height / 2,
      bottom: middle.y + height / 2,
    })),
    ...notes.map(({ note, left, top, width, height }) => ({
      name: `note ${note.id}`,
      left,
      right: left + width,
      top,
      bottom: top + height,
    })),
  ];
}

const DUST = 1e-6;

function overlap(one: Box, other: Box): boolean {
  return (
    one.left < other.right - DUST &&
    other.left < one.right - DUST &&
    one.top < other.bottom - DUST &&
    other.top < one.bottom - DUST
  );
}

describe('sectionLayout', () => {
  test.each(cases)('of %s lets no two values or notes overlap', (_, layout) => {
    const boxes = writtenBoxes(layout);
    const pairs = boxes.flatMap((one, index) => boxes.slice(index + 1).map((other) => [one, other] as const));
    const clashes = pairs
      .filter(([one, other]) => overlap(one, other))
      .map(([a, b]) => `${a.name} on ${b.name}`);
    expect(pairs.length).toBeGreaterThan(50);
    expect(clashes).toEqual([]);
  });

  test.each(cases)('of %s keeps everything that is written inside the figure', (_, layout) => {
    const outside = writtenBoxes(layout).filter(
      ({ left, right, top, bottom }) => left < 0 || right > layout.width || top < 0 || bottom > layout.height,
    );
    expect(outside).toEqual([]);
  });

  test.each(cases)('of %s crosses no leader with the next', (_, layout) => {
    const crossed = layout.notes.filter(({ leader }, index) => {
      const below = layout.notes[index + 1];
      return below !== undefined && leadersCross(leader, below.leader);
    });
    expect(crossed.map(({ note }) => note.id)).toEqual([]);
  });

  test.each(cases)('of %s lets no value cover the screw, the insert or a note', (_, layout) => {
    const { view, geometry, labels } = layout;
    const body = Math.max(
      ...geometry.insert.halves.flat().map(({ x }) => Math.abs(x)),
      ...geometry.screw.head.map(({ x }) => Math.abs(x)),
    );
    const metal = {
      left: view.x(-body),
      right: view.x(body),
      top: view.y(geometry.levels.head.top),
      bottom: view.y(geometry.levels.insert.bottom),
    };
    const covering = labels.filter(({ middle, width, height }) =>
      overlap(metal, {
        left: middle.x - width / 2,
        right: middle.x + width / 2,
        top: middle.y - height / 2,
        bottom: middle.y + height / 2,
      }),
    );
    expect(covering.map(({ id }) => id)).toEqual([]);
  });

  test.each(cases)('of %s reads from top to bottom, then from left to right', (_, { labels }) => {
    const places = labels.map(({ middle }) => middle);
    const sorted = places.toSorted((a, b) => a.y - b.y || a.x - b.x);
    expect(places).toEqual(sorted);
  });

  test.each(cases)(
    'of %s stacks vertical dimensions with the shorter one nearer to the part',
    (_, layout) => {
      const [upright] = layout.dimensions;
      const columns = (upright?.labels ?? [])
        .filter(({ id }) => ['screw-length', 'hole-depth', 'host-thickness'].includes(id))
        .toSorted((a, b) => b.middle.x - a.middle.x);
      const lengths = columns.map(({ middle }) => {
        const line = upright?.lines.find(({ from }) => from.x === middle.x);
        return (line?.to.y ?? Number.NaN) - (line?.from.y ?? Number.NaN);
      });
      expect(lengths.length).toBe(layout.view.variant === 'wide' ? 3 : 1);
      expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    },
  );

  test.each(cases)('of %s draws a shared extension line once', (_, { dimensions }) => {
    for (const { extensions } of dimensions) {
      const keys = extensions.map(({ from, to }) =>
        from.x === to.x ? `x${from.x.toFixed(1)}` : `y${from.y.toFixed(1)}`,
      );
      expect(new Set(keys).size).toBe(keys.length);
      expect(keys.length).toBeGreaterThan(0);
    }
  });

  test('names its notes with letters from a on, from top to bottom', () => {
    const { notes } = sectionLayout(section(), { variant: 'narrow', withSkinNote: false });
    expect(notes.map(({ letter }) => letter).join('')).toBe('abcdefg');
    const levels = notes.map(({ y }) => y);
    expect(levels).toEqual(levels.toSorted((a, b) => a - b));
  });

  test('has a dimension for an open gap and a sunk insert, and none for closed ones', () => {
    const ids = (input: Parameters<typeof sectionLayout>[0]) =>
      sectionLayout(input, { variant: 'wide', withSkinNote: false }).labels.map(({ id }) => id);
    const open = ids(section({ gap: 0.05, insert: { sunk: 0.04 }, seat: 'over-gap' }));
    expect(open).toEqual(expect.arrayContaining(['gap', 'sunk']));
    expect(ids(section())).not.toEqual(expect.arrayContaining(['gap']));
    expect(ids(section())).not.toEqual(expect.arrayContaining(['sunk']));
  });

  test('dimensions the boss only where there is one', () => {
    const ids = (bossDiameter?: number) =>
      sectionLayout(section({ host: bossDiameter === undefined ? {} : { bossDiameter } }), {
        variant: 'wide',
        withSkinNote: false,
      }).labels.map(({ id }) => id);
    expect(ids(10.7)).toContain('boss-diameter');
    expect(ids()).not.toContain('boss-diameter');
  });

  test('puts arrows outside where less than 26 px lie between extension lines at the end of a chain', () => {
    const arrowAtFoot = (thickness: number, floor: number) => {
      const layout = sectionLayout(section({ host: { thickness, floor } }), wide);
      const lines = layout.dimensions[0]?.lines ?? [];
      const chain = layout.labels.find(({ id }) => id === 'clamped-thickness')?.middle.x;
      const inChain = lines.filter(({ from }) => from.x === chain);
      return inChain.toSorted((a, b) => b.to.y - a.to.y)[0]?.toArrow;
    };
    expect(arrowAtFoot(7.5, 0.3)).toBe('outside');
    expect(arrowAtFoot(11.3, 4.1)).toBe('inside');
  });

  test('moves a value that is in the way of another along its own dimension line', () => {
    const layout = sectionLayout(
      section({ clamped: { thickness: 23 }, host: { thickness: 61, floor: 53.8 } }),
      wide,
    );
    const hole = layout.labels.find(({ id }) => id === 'hole-depth');
    const line = layout.dimensions[0]?.lines.find(({ from }) => from.x === hole?.middle.x);
    const half = (hole?.height ?? Number.NaN) / 2;
    expect((hole?.middle.y ?? Number.NaN) - half).toBeGreaterThanOrEqual(line?.from.y ?? Number.NaN);
    expect((hole?.middle.y ?? Number.NaN) + half).toBeLessThanOrEqual(line?.to.y ?? Number.NaN);
  });
});
