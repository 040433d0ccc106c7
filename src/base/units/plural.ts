/** The plural of a pack's or a unit's name: `cartons`, `boxes`, `trays`, `assemblies`. */
export function plural(name: string): string {
  if (/(s|x|ch|sh)$/.test(name)) return `${name}es`;
  return /[^aeiou]y$/.test(name) ? `${name.slice(0, -1)}ies` : `${name}s`;
}

/** `1 room`, `3 rooms`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
