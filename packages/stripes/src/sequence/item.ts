/** The item at an index that the caller knows to be inside the list. */
export function item<T>(list: readonly T[], index: number): T {
  return list[index] as T;
}
