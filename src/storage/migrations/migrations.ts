import { patternsAndService } from './0002-patterns-and-service.ts';
import { printersAndTests } from './0003-printers-and-tests.ts';
import type { Migration } from './migration.ts';

/** The version that documents begin at. */
export const FIRST_VERSION = 1;

/** Every migration, in the order of the versions they lead to, without a gap. */
export const MIGRATIONS: readonly Migration[] = [patternsAndService, printersAndTests];

/** A document of any known version, carried to the present one. */
export const migrated = (
  document: Readonly<Record<string, unknown>>,
  version: number,
): Readonly<Record<string, unknown>> =>
  MIGRATIONS.filter(({ to }) => to > version).reduce((older, { migrate }) => migrate(older), document);
