import { type ReactNode, useId } from 'react';
import { DimensionFigure } from './dimension-figure.tsx';
import styles from './drawing.module.css';
import type { InsertShape } from './insert-profile.ts';
import lines from './lines.module.css';
import {
  type PortraitDimensionId,
  type PortraitLayout,
  portraitDimensionIds,
  portraitLayout,
} from './portrait-layout.ts';
import { BrassHatch } from './section-patterns.tsx';
import { closedPath, openPath } from './svg-path.ts';

export type { InsertShape } from './insert-profile.ts';
export type { PortraitDimensionId } from './portrait-layout.ts';

export interface InsertPortraitProps {
  readonly insert: InsertShape;
  readonly controls?: Partial<Record<PortraitDimensionId, ReactNode>>;
  /** Stands below the knurled length, for its provenance. */
  readonly knurledLengthRemark?: ReactNode;
}

const docs: Readonly<Record<PortraitDimensionId, { readonly name: string; readonly digits: number }>> = {
  'knurl-diameter': { name: 'knurl ⌀', digits: 2 },
  length: { name: 'length', digits: 2 },
  'knurled-length': { name: 'knurled', digits: 2 },
  'pilot-diameter': { name: 'pilot ⌀', digits: 2 },
};

const isLevel = (id: PortraitDimensionId) => id === 'knurl-diameter' || id === 'pilot-diameter';

/** The insert as measured, half in section. */
export function InsertPortrait({ insert, controls = {}, knurledLengthRemark }: InsertPortraitProps) {
  const id = useId();
  const layout = portraitLayout(insert);
  const numbers: Readonly<Record<PortraitDimensionId, number>> = {
    'knurl-diameter': insert.knurlDiameter,
    length: insert.length,
    'knurled-length': insert.knurledLength,
    'pilot-diameter': insert.pilotDiameter,
  };
  const text = (key: PortraitDimensionId) => shortest(numbers[key], docs[key].digits);
  const words = portraitDimensionIds.map((key) => `${docs[key].name.replace('⌀', 'diameter')} ${text(key)}`);
  return (
    <div className={styles.portrait}>
      <svg
        viewBox={`0 0 ${layout.width} ${layout.height}`}
        role="img"
        aria-label={`The insert, half in section; ${words.join(', ')} mm.`}
      >
        <PortraitFigure id={id} layout={layout} />
      </svg>
      {portraitDimensionIds.map((key) => (
        <div
          key={key}
          className={[styles.label, isLevel(key) && styles.row].filter(Boolean).join(' ')}
          data-dimension={key}
          style={{
            left: `${((layout.values[key].x / layout.width) * 100).toFixed(3)}%`,
            top: `${((layout.values[key].y / layout.height) * 100).toFixed(3)}%`,
          }}
        >
          <span className={styles.name}>{docs[key].name}</span>
          {controls[key] ?? <span className={styles.value}>{text(key)}</span>}
          {key === 'knurled-length' && knurledLengthRemark !== undefined ? (
            <span className={styles.remark}>{knurledLengthRemark}</span>
          ) : null}
        </div>
      ))}
    </div>
  );
}

/** At most so many digits, at least one after the point. */
function shortest(value: number, digits: number): string {
  return value.toFixed(digits).replace(/(\.\d+?)0+$/, '$1');
}

function PortraitFigure({ id, layout }: { readonly id: string; readonly layout: PortraitLayout }) {
  const knurl = layout.knurl.map(closedPath).join('');
  return (
    <>
      <defs>
        <BrassHatch id={`${id}brass`} spacing={3.6} />
        <pattern
          id={`${id}knurl`}
          width={9}
          height={9}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(30) skewX(-30)"
        >
          <rect className={lines.brass} width={10} height={10} />
          <path className={lines.hatchBrass} d="M0 0V9M0 0H9" fill="none" />
        </pattern>
      </defs>
      <path fill={`url(#${id}brass)`} d={closedPath(layout.cut)} />
      <path className={lines.thick} d={closedPath(layout.cut)} />
      <path className={lines.brass} d={closedPath(layout.seen)} />
      <path fill={`url(#${id}knurl)`} d={knurl} />
      <path className={lines.thin} d={layout.thin.map(openPath).join('')} />
      <path className={lines.thick} d={layout.thick.map(openPath).join('')} />
      <path className={lines.centre} d={openPath(layout.centre)} />
      <DimensionFigure group={{ labels: [], lines: layout.lines, extensions: layout.extensions, ties: [] }} />
    </>
  );
}
