/** Round temperatures from room, or the service below it, to beyond the stop, °C. */
export function temperatureTicks(service: number, stop: number): readonly number[] {
  const from = Math.min(ROOM, service);
  const step = STEPS.find((candidate) => (stop - from) / candidate <= MOST) ?? LARGEST;
  const first = Math.floor(from / step);
  const last = Math.floor(stop / step) + 1;
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
}

const ROOM = 20;
const STEPS = [5, 10, 20];
const LARGEST = 50;
const MOST = 8;
