import type { ScrewLengths } from '../core/screws/screw.ts';

/**
 * Lengths that are sold, mm, ascending, one row a thread.
 * Metric: series of ISO 888 within the commercial range of ISO 4762, both remembered.
 * Inch: 3/16 to 1 1/2 in as commonly sold, remembered; 10-24 starts at 1/4 in, 1/4-20 at 3/8 in.
 */
export const SCREW_LENGTHS: readonly ScrewLengths[] = [
  { thread: 'M2', standard: 'ISO 4762', lengths: [3, 4, 5, 6, 8, 10, 12, 16, 20], source: 'iso-888' },
  { thread: 'M2.5', standard: 'ISO 4762', lengths: [4, 5, 6, 8, 10, 12, 16, 20, 25], source: 'iso-888' },
  { thread: 'M3', standard: 'ISO 4762', lengths: [5, 6, 8, 10, 12, 16, 20, 25, 30], source: 'iso-888' },
  { thread: 'M4', standard: 'ISO 4762', lengths: [6, 8, 10, 12, 16, 20, 25, 30, 35, 40], source: 'iso-888' },
  {
    thread: 'M5',
    standard: 'ISO 4762',
    lengths: [8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50],
    source: 'iso-888',
  },
  {
    thread: 'M6',
    standard: 'ISO 4762',
    lengths: [10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60],
    source: 'iso-888',
  },
  {
    thread: 'M8',
    standard: 'ISO 4762',
    lengths: [12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80],
    source: 'iso-888',
  },
  {
    thread: 'UNC-4-40',
    standard: 'ASME B18.3 cap',
    lengths: [4.7625, 6.35, 7.9375, 9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1],
    source: 'inch-screw-lengths',
  },
  {
    thread: 'UNC-6-32',
    standard: 'ASME B18.3 cap',
    lengths: [4.7625, 6.35, 7.9375, 9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1],
    source: 'inch-screw-lengths',
  },
  {
    thread: 'UNC-8-32',
    standard: 'ASME B18.3 cap',
    lengths: [4.7625, 6.35, 7.9375, 9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1],
    source: 'inch-screw-lengths',
  },
  {
    thread: 'UNC-10-24',
    standard: 'ASME B18.3 cap',
    lengths: [6.35, 7.9375, 9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1],
    source: 'inch-screw-lengths',
  },
  {
    thread: 'UNC-1/4-20',
    standard: 'ASME B18.3 cap',
    lengths: [9.525, 11.1125, 12.7, 15.875, 19.05, 22.225, 25.4, 31.75, 38.1],
    source: 'inch-screw-lengths',
  },
];
