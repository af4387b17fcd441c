import { type Point, point } from '../drawing/points.ts';
import { openPath } from '../drawing/svg-path.ts';
import styles from './pattern.module.css';
import { type PlanArrow, planArrows } from './plan-arrows.ts';
import type { PlanInput, PlanScrew } from './plan-input.ts';
import { boxRound, PLAN_LINE, PLAN_TEXT, placeLabels } from './plan-labels.ts';
import { axesOf, edgesOf, middleOf, pointsAlong } from './plan-lines.ts';
import { type PlanVariant, type PlanView, planView } from './plan-view.ts';
import { arrowWords, describePlan, screwLines } from './plan-words.ts';

/** The screws of the part from above, to scale, with what acts on it and what each of them gets of it. */
export function PlanFigure({ input, variant }: { readonly input: PlanInput; readonly variant: PlanVariant }) {
  const view = planView(input, variant);
  const arrows = planArrows(input, view);
  return (
    <svg
      className={styles.plan}
      viewBox={`0 0 ${view.width} ${view.height}`}
      style={{ maxWidth: view.width }}
      role="img"
      aria-label={describePlan(input)}
    >
      <Axes input={input} view={view} />
      <Edges input={input} view={view} />
      <Screws input={input} view={view} />
      <Centroid at={view.place(input.centroid)} />
      {arrows.map(({ id, line, heads }) => (
        <g key={id}>
          <path className={styles.halo} d={line} />
          <path className={styles.arrow} d={line} />
          <path className={styles.arrowHead} d={heads} />
        </g>
      ))}
      <circle
        className={styles.loadPoint}
        cx={view.place(input.load.at).x}
        cy={view.place(input.load.at).y}
        r={2.5}
      />
      <Labels input={input} view={view} arrows={arrows} />
    </svg>
  );
}

interface PartProps {
  readonly input: PlanInput;
  readonly view: PlanView;
}

/** Centre lines through the origin, with the names of the axes at their ends. */
function Axes({ input, view }: PartProps) {
  const { lines, names } = axesOf(input, view);
  return (
    <>
      <path className={styles.axis} d={lines.map(openPath).join('')} />
      {names.map(({ name, at }) => (
        <text key={name} className={styles.axisName} x={at.x} y={at.y + 4}>
          {name}
        </text>
      ))}
    </>
  );
}

/** Edges of the part, thin; those that stay down, thick. */
function Edges({ input, view }: PartProps) {
  const { outline, down } = edgesOf(input, view);
  return (
    <>
      <path className={styles.edge} d={openPath(outline)} />
      <path className={styles.down} d={down.map(openPath).join('')} />
    </>
  );
}

function Screws({ input, view }: PartProps) {
  return input.screws.map((screw) => {
    const { x, y } = view.place(screw);
    return (
      <g
        key={screw.number}
        data-worst={screw.hasMostPull || screw.hasMostShear || undefined}
        className={styles.screw}
      >
        <circle cx={x} cy={y} r={view.screwRadius} />
        <text x={x} y={y + 4}>
          {screw.number}
        </text>
      </g>
    );
  });
}

const CROSS = 6;

function Centroid({ at }: { readonly at: Point }) {
  return (
    <path
      className={styles.centroid}
      d={
        openPath([point(at.x - CROSS, at.y - CROSS), point(at.x + CROSS, at.y + CROSS)]) +
        openPath([point(at.x - CROSS, at.y + CROSS), point(at.x + CROSS, at.y - CROSS)])
      }
    />
  );
}

const ARROW_ROOM = 3;
const LINE_ROOM = 3;
const LINE_STEP = 6;
const NAME_ROOM = 8;

function Labels({ input, view, arrows }: PartProps & { readonly arrows: readonly PlanArrow[] }) {
  const { outline, down } = edgesOf(input, view);
  const taken = [
    ...input.screws.map((screw) => boxRound(view.place(screw), view.screwRadius)),
    ...arrows.flatMap(({ way }) => way.map((at) => boxRound(at, ARROW_ROOM))),
    ...pointsAlong(outline, LINE_STEP).map((at) => boxRound(at, LINE_ROOM)),
    ...axesOf(input, view).names.map(({ at }) => boxRound(at, NAME_ROOM)),
    boxRound(view.place(input.centroid), CROSS),
  ];
  const ofScrew = (screw: PlanScrew) => ({
    id: `screw ${screw.number}`,
    lines: screwLines(screw),
    at: view.place(screw),
    reach: view.screwRadius,
    mayStray: false,
  });
  const isWorst = ({ hasMostPull, hasMostShear }: PlanScrew) => hasMostPull || hasMostShear;
  const wanted = [
    ...input.screws.filter(isWorst).map(ofScrew),
    ...arrows.map(({ id, tip }) => ({
      id,
      lines: [arrowWords(id, input)],
      at: tip,
      reach: ARROW_ROOM + 3,
      mayStray: true,
    })),
    ...input.screws.filter((screw) => !isWorst(screw)).map(ofScrew),
    ...down.map((line) => ({
      id: `down ${line.map(({ x, y }) => `${x} ${y}`).join(' ')}`,
      lines: ['stays down'],
      at: middleOf(line),
      reach: LINE_ROOM,
      mayStray: false,
    })),
  ];
  return placeLabels(wanted, taken, view).map(({ id, lines, left, top }) => (
    <text key={id} className={styles.amount} fontSize={PLAN_TEXT}>
      {lines.map((line, index) => (
        <tspan key={line} x={left} y={top + (index + 0.8) * PLAN_LINE}>
          {line}
        </tspan>
      ))}
    </text>
  ));
}
