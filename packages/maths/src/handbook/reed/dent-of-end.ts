/** The dent of an end, counted from that of end 1, and its place there. */
export function dentOf(
  end: number,
  order: readonly number[],
  endsInOrder: number,
): readonly [dent: number, place: number] {
  const rounds = Math.floor((end - 1) / endsInOrder);
  let place = end - rounds * endsInOrder;
  let at = 0;
  for (let held = order[0] ?? 0; place > held; held = order[at] ?? 0) {
    place -= held;
    at += 1;
  }
  return [rounds * order.length + at + 1, place];
}
