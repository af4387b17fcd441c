import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Those that take longest come first, so that nothing runs alone at the end. */
const ORDER = ['page', 'fresh', 'pure'];

/**
 * Project by project: a worker keeps what it has loaded as long as the next file is of the same project. Within a
 * project the order is the usual one.
 */
export class ProjectByProject extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ project }: TestSpecification) => ORDER.indexOf(project.name);
    return (await super.sort(files)).sort((one, other) => place(one) - place(other));
  }
}
