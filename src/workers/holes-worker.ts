import type { HolesRequests } from './holes-requests.ts';
import type { FromWorkerOf, Port, ToWorkerOf } from './line.ts';
import { messagePause } from './pause.ts';
import { serveHoles } from './serve-holes.ts';

// The compiler takes `self` for a page's; a worker's has as much in common with it as the line needs.
serveHoles(self satisfies Port<FromWorkerOf<HolesRequests>, ToWorkerOf<HolesRequests>>, messagePause());
