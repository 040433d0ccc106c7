/** A copy of an object without some of its keys. */
export function leaveOut<T extends object, K extends keyof T>(object: T, ...keys: readonly K[]): Omit<T, K> {
  const left = new Set<PropertyKey>(keys);
  return Object.fromEntries(Object.entries(object).filter(([key]) => !left.has(key))) as Omit<T, K>;
}

/** A value without each `path` key, at any depth: where in its record a thing is written says nothing of the thing. */
export function withoutPaths(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutPaths);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== 'path')
      .map(([key, part]) => [key, withoutPaths(part)]),
  );
}
