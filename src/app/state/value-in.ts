/** The value at a path of a document, the whole at an empty one; undefined where there is none. */
export const valueIn = (document: unknown, path: string): unknown =>
  path === ''
    ? document
    : path.split('.').reduce<unknown>((value, key) => {
        if (typeof value !== 'object' || value === null) return undefined;
        return Object.hasOwn(value, key) ? Reflect.get(value, key) : undefined;
      }, document);
