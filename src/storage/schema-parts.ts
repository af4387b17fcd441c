import * as z from 'zod/mini';
import { LIMITS, type LimitName } from './limits.ts';

/** A number within a range of the door. */
export const within = (name: LimitName) =>
  z.number().check(z.gte(LIMITS[name].least), z.lte(LIMITS[name].greatest));
export const count = (name: LimitName) => within(name).check(z.int());
export const id = z.string().check(z.minLength(1), z.maxLength(60));
export const text = (greatest: number) => z.string().check(z.maxLength(greatest));
export const readings = (name: LimitName) =>
  z.array(within(name)).check(z.minLength(LIMITS.readings.least), z.maxLength(LIMITS.readings.greatest));
