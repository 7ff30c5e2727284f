const TEXT = `# A warp tied to the one before it. Write your own figures in place of these; leave out what you do not know:
# the plan says which sheet waits for it. After # stands a remark.
thrum: 1 # the form of this file
title: Striped napkins for the village hall # the sheets are headed with it
note: Madder and indigo stripes this time, tied to the green run. # words for whoever works with the sheets

stripes: # the new warp, from end 1; every thread counts
  - 24 natural # a number of ends, then the name of their yarn; 16 plum + pink are both in the hand at once
  - mirror: # there and back again
      - 40 madder
      - repeat: 3 # three times
        of: [12 natural, 6 indigo]
      - 66 natural
    middle: twice # whether the last of these stands once or twice in the middle
  - 24 natural
groups: 24 # ends counted, wound, tied and ticked together; left out, a stripe is a group

yarns: # by the names used above; count: the label (3360 yd per lb, 600 m per 100 g), or plies and number
  # sold: one package as it is sold, with its price; onHand: 6 oz, 840 yd, 2 cones, or none
  natural: { count: 2-ply of 8 cotton, sold: 8 oz at 14.50 EUR, onHand: 6 oz }
  madder: { count: 2-ply of 8 cotton, sold: 8 oz at 15.20 EUR, onHand: none }
  indigo: { count: 2-ply of 14 metric, sold: 50 g at 9 EUR, onHand: 20 g }

loom: # the wood as it stands
  reed: 10 per inch # dents; or 50 per 10 cm
  sley: 2 # ends in a dent; a list where they differ
  threading: [1, 2, 3, 4] # shafts from old end 1, over and over
  gapInDent: 1.6 mm # free between two wires, by a feeler; or: not measured
  room: # still empty outside the outermost threaded ends
    before: { dents: 28, heddles: 8 } # before end 1; heddles: so many on each shaft; a list, [8, 8, 7, 8], where they differ
    after: { dents: 28, heddles: 8 } # after the last
  endOneOn: left # seen from the front

oldWarp: # the threads in the loom; none where it is threaded afresh
  ends: 368 # threads that are there, counted on the loom
  yarn: 2-ply of 8 cotton # the count of its threads
  left: { pastReed: 10 in, behindHeddles: 24 in } # what will stand there after the cut

join: # what the hands do
  knots: in front of the reed # or: behind the reed, behind the heddles
  knot: overhand of both ends # or: overhand of one end, square, weaver's

cloth: # what it is wanted to be, and what it loses
  picks: 18 per inch # at weaving tension
  takeUp: 8 % lost # of the thread, wound to weaving tension; or two measures: 21 in to 19 1/2 in
  lengthLoomToFinished: 10 % lost # of the cloth
  widthReedToFinished: 15 % lost # of the width

warp: # a length written here is fixed beforehand
  wasteInFront: 10 in # of the warp that cannot be woven before the first pick, were it threaded afresh
  wasteBehind: 18 in # and behind the last; the old warp stands in for one of the two, which, the knots decide
pieces: # in the order of weaving; a header is an entry with atLoom
  - number: 9 # or: as many as the warp gives, as many as the yarn gives
    name: napkin # what it is
    finishedLength: 16 in # without fringe
    hemEachEnd: 3/4 in # all that is turned in at each end; leave it out for none
weft: # from the first pick of a piece to its last
  stripes: natural # one yarn, or a list of picks or lengths
  allowance: 5 % added # for joins and bobbin ends
winding: # how the warp is wound
  threads: 2 # wound together
  chains: by stripe # or: by group, by colour, every 40 ends
  most: 140 ends # of one chain; or a mass
  extra: [2 natural, 1 indigo] # wound beside the warp, never tied; leave it out for none
`;

/** The text of a job to fill in, with a remark on every line; it is a whole job and reads as one. */
export function newJob(): string {
  return TEXT;
}
