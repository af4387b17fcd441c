import type { SectionInput } from './section-input.ts';

/** The section in words, for whoever cannot see it. */
export function describeSection(input: SectionInput): string {
  return `Section through the joint with ${input.screw.designation}`;
}
