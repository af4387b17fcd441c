/** A closed surface of triangles, counter-clockwise seen from outside. */
export interface Mesh {
  /** x, y and z of each vertex, mm. */
  readonly positions: Float64Array;
  /** Three vertices a triangle. */
  readonly triangles: Uint32Array;
}
