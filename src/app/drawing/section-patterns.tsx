import styles from './lines.module.css';
import type { View } from './view.ts';

export interface PatternIds {
  readonly lid: string;
  readonly washer: string;
  readonly brass: string;
  readonly layers: string;
  readonly lidLayers: string;
}

export function patternIds(id: string): PatternIds {
  return {
    lid: `${id}lid`,
    washer: `${id}washer`,
    brass: `${id}brass`,
    layers: `${id}layers`,
    lidLayers: `${id}lid-layers`,
  };
}

/** Layers nearer than this on paper are drawn as every second, third, … one, px. */
const NEAREST_LAYERS = 3.4;

export function layerSpacing(layerHeight: number, scale: number): number {
  const px = layerHeight * scale;
  return px * Math.max(1, Math.ceil(NEAREST_LAYERS / px));
}

interface PatternProps {
  readonly ids: PatternIds;
  readonly view: View;
  readonly layerHeight: number;
  readonly areLayersUpright: boolean;
}

/** Hatches of cut metal and the layers of cut plastic. */
export function SectionPatterns({ ids, view, layerHeight, areLayersUpright }: PatternProps) {
  const isWide = view.variant === 'wide';
  const layers = layerSpacing(layerHeight, view.scale);
  return (
    <>
      <Hatch id={ids.lid} spacing={isWide ? 9.4 : 5.6} angle={45} className={styles.hatchLid} />
      <Hatch id={ids.washer} spacing={isWide ? 5 : 3.6} angle={-45} className={styles.hatchLid} />
      <BrassHatch id={ids.brass} spacing={isWide ? 4.5 : 3.6} />
      <Layers id={ids.layers} spacing={layers} origin={view.y(0)} isUpright={areLayersUpright} />
      <Layers id={ids.lidLayers} spacing={layers} origin={view.y(0)} isUpright={false} />
    </>
  );
}

interface HatchProps {
  readonly id: string;
  readonly spacing: number;
  readonly angle: number;
  readonly className: string | undefined;
}

function Hatch({ id, spacing, angle, className }: HatchProps) {
  return (
    <pattern
      id={id}
      width={spacing}
      height={spacing}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${angle})`}
    >
      <path className={className} d={`M0 0V${spacing}`} />
    </pattern>
  );
}

/** Brass: its own ground, and a closer hatch the other way. */
export function BrassHatch({ id, spacing }: { readonly id: string; readonly spacing: number }) {
  return (
    <pattern
      id={id}
      width={spacing}
      height={spacing}
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(-45)"
    >
      <rect className={styles.brass} width={spacing + 1} height={spacing + 1} />
      <path className={styles.hatchBrass} d={`M0 0V${spacing}`} />
    </pattern>
  );
}

interface LayersProps {
  readonly id: string;
  readonly spacing: number;
  readonly origin: number;
  readonly isUpright: boolean;
}

function Layers({ id, spacing, origin, isUpright }: LayersProps) {
  const tile = 40;
  return (
    <pattern
      id={id}
      width={isUpright ? spacing : tile}
      height={isUpright ? tile : spacing}
      y={origin}
      patternUnits="userSpaceOnUse"
    >
      <path className={styles.layer} d={isUpright ? `M.4 0V${tile}` : `M0 .4H${tile}`} />
    </pattern>
  );
}
