import { item } from "../sequence/item.js";

interface Block {
  targets: number[];
  place: number;
}

/**
 * Whole places, never falling and never outside 0…`most`, that lie together as near as can be to the targets.
 * Pools neighbours out of order and puts each pool on its median, which is exact for sums of distances; halves go down.
 */
export function leastMoves(targets: readonly number[], most: number): readonly number[] {
  const blocks: Block[] = [];
  for (const target of targets) {
    let block: Block = { targets: [target], place: nearest([target]) };
    for (let before = blocks.at(-1); before !== undefined && before.place > block.place; before = blocks.at(-1)) {
      blocks.pop();
      const pooled = [...before.targets, ...block.targets].sort((one, other) => one - other);
      block = { targets: pooled, place: nearest(pooled) };
    }
    blocks.push(block);
  }
  return blocks.flatMap(({ targets: pooled, place }) => pooled.map(() => Math.min(Math.max(place, 0), most)));
}

function nearest(sorted: readonly number[]): number {
  const median = item(sorted, (sorted.length - 1) >> 1);
  const [down, up] = [Math.floor(median), Math.ceil(median)];
  return distance(sorted, up) < distance(sorted, down) ? up : down;
}

function distance(targets: readonly number[], place: number): number {
  return targets.reduce((sum, target) => sum + Math.abs(target - place), 0);
}
