import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { documentFileName, documentText } from '../../../src/app/state/document-file.ts';
import { readDocumentText } from '../../../src/app/state/kept-joint.ts';

describe('a joint as a file', () => {
  test('opens as what was saved', () => {
    expect(readDocumentText(documentText(SENSOR_LID))).toMatchObject({
      kind: 'admitted',
      document: SENSOR_LID,
    });
  });
  test.each([
    ['Sensor lid', 'sensor-lid.joint.json'],
    ['Träger 2/3 ', 'trager-2-3.joint.json'],
    ['???', 'joint.joint.json'],
  ])('of %s is called %s', (name, file) => {
    expect(documentFileName(name)).toBe(file);
  });
});
